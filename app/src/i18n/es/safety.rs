//! Spanish: the cautions.

use crate::i18n::strings::safety::Safety;

pub(super) const SAFETY: Safety = Safety {
    title: "Seguridad",
    first: "Las normas locales van antes que todo lo dicho aquí. Una persona autorizada conecta y revisa lo que la norma le reserva.",
    danger: "Peligro",
    warning: "Cuidado",
    note: "Conviene saber",
    group_heat: "Calor y fuego",
    group_salt: "Sal y combustible",
    group_pressure: "Presión",
    group_electricity: "Electricidad",
    group_food: "Frijoles y otra comida",
    hot_metal: "El metal a más de 60 °C (140 °F) quema al tocarlo y no parece caliente. Use una agarradera o un trapo grueso y seco, y no deje que los niños se acerquen.",
    fire: "Un depósito a 250 °C (480 °F) puede encender aceite, paja, cáscara, tela y madera. Manténgalos lejos de él y fuera de su aislamiento.",
    steam: "El vapor y el agua hirviendo escaldan. Abra la tapa hacia el lado contrario a usted y saque la olla derecha, con las dos manos.",
    burn_help: "Enfríe una quemadura veinte minutos bajo agua limpia que corra y busque ayuda si es más grande que la mano, o en la cara o en un niño.",
    nitrate: "La sal de nitrato fundida atraviesa la piel y aviva el fuego. Nunca debe tocar azúcar, aceite, carbón u otro combustible, ni agua.",
    nitrate_trouble: "Si la sal se sale o echa humo: aleje a todos, desconecte el panel de la resistencia y deje que se endurezca sola. Sin agua, y sin nada que arda para recogerla.",
    pressure: "Nunca caliente un recipiente cerrado que no tenga válvula de alivio.",
    panel_live: "Un panel da tensión siempre que le llega luz y no se puede apagar. Cúbralo antes de tocar un cable y nunca tire de un enchufe con carga: el arco sigue ardiendo.",
    wiring: "El calibre de los cables y los fusibles sigue las normas locales. Lo que pase de muy baja tensión lo conecta una persona autorizada.",
    fuse: "El fusible va cerca del panel o de la batería, y el interruptor debe ser para corriente continua de esa tensión: uno para la red puede seguir ardiendo.",
    beans: "Frijoles secos: remójelos, bote esa agua y luego hiérvalos fuerte en agua nueva 30 minutos, y nunca menos de 10. Los que no llegan a hervir pueden enfermarle gravemente.",
    meat: "Cocine la carne hasta que su centro llegue a 74 °C (165 °F).",
    holding: "Mantenga la comida cocida a 60 °C (140 °F) o más, o enfríela rápido. En la comida tibia crecen los gérmenes.",
    cook_decides: "Duskpot aconseja; quien cocina decide. Si la comida no está cocida, no lo está.",
};

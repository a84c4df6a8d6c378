//! Spanish: the cautions.

use crate::i18n::strings::safety::Safety;

pub(super) const SAFETY: Safety = Safety {
    title: "Seguridad",
    danger: "Peligro",
    hot_metal: "El metal a más de 60 °C quema al tocarlo y no parece caliente. Use una agarradera o un trapo grueso y seco, y no deje que los niños se acerquen.",
    fire: "Un depósito a 250 °C puede encender aceite, paja, cáscara, tela y madera. Manténgalos lejos de él y fuera de su aislamiento.",
    nitrate: "La sal de nitrato fundida atraviesa la piel y aviva el fuego. Nunca debe tocar azúcar, aceite, carbón u otro combustible, ni agua.",
    pressure: "Nunca caliente un recipiente cerrado que no tenga válvula de alivio.",
    panel_live: "Un panel da tensión siempre que le llega luz y no se puede apagar. Cúbralo antes de tocar un cable y nunca tire de un enchufe con carga: el arco sigue ardiendo.",
    wiring: "El calibre de los cables y los fusibles sigue las normas locales. Lo que pase de muy baja tensión lo conecta una persona autorizada.",
    beans: "Frijoles secos: remójelos, bote esa agua y luego hiérvalos fuerte al menos 10 minutos en agua nueva. Los que no llegan a hervir pueden enfermar gravemente.",
    meat: "Cocine la carne hasta que su centro llegue a 74 °C.",
    holding: "Mantenga la comida cocida a 60 °C o más, o enfríela rápido. En la comida tibia crecen los gérmenes.",
    cook_decides: "Duskpot aconseja; quien cocina decide. Si la comida no está cocida, no lo está.",
};

//! Where a figure comes from, and how far it may be off.
//!
//! Every figure in the tables of this crate is a [`Datum`]. `model/DATA.md` is printed from them.

/// A figure with its doubt and its origin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Datum {
    /// The figure itself, in the unit that the field's name ends in.
    pub value: f64,
    /// One standard deviation, absolute, in the same unit: what a person who reads the figure
    /// off the table may be wrong by. Where the source gives a range, half of that range.
    pub spread: f64,
    /// The published source, or an admission that there is none.
    pub source: Source,
}

impl Datum {
    /// A figure with its doubt as one standard deviation in the figure's own unit.
    #[must_use]
    pub const fn new(value: f64, spread: f64, source: Source) -> Self {
        Self {
            value,
            spread,
            source,
        }
    }

    /// A figure with its doubt as a share of the figure, such as 0.05 for 5 %.
    #[must_use]
    pub const fn relative(value: f64, share: f64, source: Source) -> Self {
        Self {
            value,
            spread: value * share,
            source,
        }
    }

    /// The doubt as a share of the figure; 0 for a figure of 0.
    #[must_use]
    pub fn spread_share(self) -> f64 {
        if self.value.abs() < f64::MIN_POSITIVE {
            0.0
        } else {
            (self.spread / self.value).abs()
        }
    }
}

macro_rules! sources {
    ($($(#[$doc:meta])* $name:ident, $key:literal, $citation:literal;)*) => {
        /// The origin of a figure.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
        pub enum Source { $(#[doc = $citation] $name,)* }

        impl Source {
            /// Every source, in the order of the list in `DATA.md`.
            pub const ALL: &'static [Self] = &[$(Self::$name,)*];

            /// The short key that stands beside a figure.
            #[must_use]
            pub const fn key(self) -> &'static str {
                match self { $(Self::$name => $key,)* }
            }

            /// The full reference, as a bibliography would print it.
            #[must_use]
            pub const fn citation(self) -> &'static str {
                match self { $(Self::$name => $citation,)* }
            }
        }
    };
}

sources! {
    Memory, "mem", "From memory, not confirmed against a publication.";
    CommonPractice, "cp", "Common practice, no source.";
    Inferred, "inf", "Inferred by us from other figures in these tables; not published.";
    AluminiumFire, "EC9", "EN 1999-1-2, physical properties of aluminium at high temperature (formulas from memory; 20 degC values checked against CIBSE Guide A, table 3.36).";
    SteelFire, "EC3", "EN 1993-1-2:2005, 3.4.1.2 and 3.4.1.3.";
    ConcreteFire, "EC2", "EN 1992-1-2, 3.3 (formulas from memory).";
    Cibse, "CIBSE", "CIBSE Guide A, table 3.36.";
    En12524, "EN12524", "EN 12524:2000, tabulated design values of building materials.";
    Incropera, "INC", "Incropera et al., Fundamentals of Heat and Mass Transfer: table 4.1 (shape factors), table A.1 (metals; from memory).";
    Rocks, "ROCK", "Seyitini et al., Data in Brief 63 (2025) 112287: seven igneous and metamorphic rocks.";
    Soapstone, "SOAP", "A stone producer's data page for talc-magnesite soapstone.";
    Vdi, "VDI", "VDI Heat Atlas, 2nd ed. (2010), table of refractories.";
    Chemicals, "CRC", "CRC Handbook of Chemistry and Physics and NIST Chemistry WebBook, as collected in the Python library chemicals 1.5.2.";
    Zalba, "ZALBA", "Zalba et al., Appl. Therm. Eng. 23 (2003) 251 (review; figures from memory).";
    Carling, "CARL", "Carling, Thermochim. Acta 60 (1983) 265: sodium and potassium nitrate, 350 to 800 K.";
    Tong, "TONG", "Tong et al., J. Chem. Eng. Data 55 (2010) 119.";
    Hoehlein, "HOHL", "Hoehlein et al., Materials 10 (2017) 444.";
    ErythritolCycles, "IHTC14", "14th International Heat Transfer Conference (IHTC14, 2010), p. 409: freezing of erythritol over repeated cycles, with and without an electric current (abstract).";
    Pilar, "PILAR", "Pilar et al., Thermochim. Acta 546 (2012) 81: supercooling of magnesium chloride hexahydrate.";
    Weingrill, "HDPE", "Weingrill et al., Polymer Testing 76 (2019) 433 and EPF 2019.";
    Bauer, "BAUER", "Bauer et al., Effstock 2009.";
    Zavoico, "SALT", "Zavoico, Solar Power Tower Design Basis Document, SAND2001-2100 (2001): correlations of molten nitrates.";
    Fasina, "FAS", "Fasina and Colley, Int. J. Food Prop. 11 (2008) 738: rapeseed and soybean oil, 35 to 180 degC.";
    Ashrae, "ASH", "ASHRAE Handbook, Fundamentals: thermal properties of building and insulating materials at 24 degC.";
    AshraePool, "ASHP", "ASHRAE Handbook, Applications: evaporation from pools (formula from memory).";
    En14303, "EN14303", "EN 14303: factory made mineral wool for building equipment; ASTM C553.";
    AstmC533, "C533", "ASTM C533-07: calcium silicate block (conductivity column from memory).";
    AstmC892, "C892", "ASTM C892-18a: high-temperature fibre blanket.";
    RiceHulls, "HULL", "Yarbrough et al., rice hulls as a thermal insulation material.";
    HuskFire, "HUSK", "Self-ignition of gasification residues of rice husk, Heliyon (September 2024).";
    StrawFire, "STRAW", "Markova et al., BioResources 17 (2022) 6926: ignition of straw and hay on a hot plate.";
    Wool, "WOOL", "Sheep wool insulation, Materials 17 (2024) 3339.";
    ChoiOkos, "CO", "Choi and Okos (1986), as in ASHRAE Handbook, Refrigeration, chapter 9.";
    PulseGuide, "PULSE", "Cooking guide of a pulse growers' council.";
    Deshpande, "BEAN", "Deshpande and Cheryan, Plant Foods Hum. Nutr. 36 (1986) 157.";
    Quast, "QS", "Quast and da Silva, J. Food Sci. 42 (1977) 370: softening at 98 to 127 degC.";
    VanLoey, "VL", "Van Loey et al., J. Food Eng. 24 (1995) 361.";
    Rice, "RICE", "Kinetics of cooking of milled rice (Suzuki and others): about 17 kcal/mol below the break.";
    Potato, "POT", "Kinetics of cooking of potato, Hiroshima University repository 24667.";
    BadBug, "FDA", "US FDA, Bad Bug Book: phytohaemagglutinin.";
    Phls, "PHLS", "UK Public Health Laboratory Service, advice on red kidney beans.";
    FoodCode, "FC", "US FDA Food Code 3-401.11, 3-403.11, 3-501.16; USDA FSIS food service chart (2008).";
    UkFood, "UKFSA", "UK Food Standards Agency, core temperatures and times.";
    WhoKeys, "WHO", "WHO, Five Keys to Safer Food manual.";
    IecSelv, "SELV", "IEC 61558-1:2005, 3.7.16: ripple-free DC up to 120 V; IEC 60335-1:2010, 3.4.2: 60 V.";
    HotSurface, "BURN", "ISO 13732-1:2006, burn thresholds of hot surfaces (from memory).";
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn keys_are_distinct() {
        for (idx, source) in Source::ALL.iter().enumerate() {
            assert!(
                !Source::ALL[..idx]
                    .iter()
                    .any(|other| other.key() == source.key()),
                "{source:?}"
            );
        }
    }

    #[test]
    fn relative_spread_is_kept_in_the_unit_of_the_figure() {
        let density = Datum::relative(2700.0, 0.02, Source::Memory);
        assert!((density.spread - 54.0).abs() < 1e-9);
        assert!((density.spread_share() - 0.02).abs() < 1e-12);
        assert!(Datum::new(0.0, 1.0, Source::Memory).spread_share() < 1e-12);
    }
}

//! The few skies a household can tell apart, and what each lets through.
//!
//! An hour's sky is a small mixture of states rather than one mean: a resistor wired straight to
//! the panel heats with the square of the light, and the mean of a square is not the square of
//! the mean. Sun and shade by turns heat it up to twice as much as the same light spread evenly.

/// One state of an hour's sky and how much of the hour it takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SkyState {
    /// Share of the hour. The shares of an hour add up to 1.
    pub weight: f64,
    /// Global horizontal irradiance as a share of what a clear sky would give.
    pub clear_sky_index: f64,
}

/// The sky of an hour: its states, and how far its mean may be off.
#[derive(Debug, Clone, PartialEq)]
pub struct HourSky {
    /// The states within the hour; their order means nothing.
    pub states: Vec<SkyState>,
    /// Standard deviation of the hour's mean irradiance over that mean: what one such hour
    /// differs from another that a person would call the same.
    pub relative_sd: f64,
}

impl HourSky {
    /// Mean clear-sky index of the hour.
    pub fn mean_index(&self) -> f64 {
        self.states
            .iter()
            .map(|state| state.weight * state.clear_sky_index)
            .sum()
    }
}

/// What a person sees on looking up.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Sky {
    /// Blue sky, sharp shadows.
    Clear,
    /// Thin cloud or haze; shadows, but soft.
    Thin,
    /// Sun and clouds by turns.
    Patchy,
    /// Grey all over, no shadows.
    Grey,
    /// Dark cloud, rain or thick fog.
    Dark,
}

impl Sky {
    /// All skies, from the brightest to the darkest.
    pub const ALL: [Self; 5] = [
        Self::Clear,
        Self::Thin,
        Self::Patchy,
        Self::Grey,
        Self::Dark,
    ];

    /// The sky of an hour that nobody saw: sun and clouds by turns, the middle of the five.
    pub const ORDINARY: Self = Self::Patchy;

    /// The mixture of states that this sky stands for.
    ///
    /// The means follow what overcast skies of one type of cloud let through by Kasten and
    /// Czeplak, Solar Energy 24 (1980) 177, from memory: cirrus 0.61, altostratus 0.27,
    /// stratocumulus 0.25, stratus 0.18, nimbostratus 0.16 of a clear sky; haze and a veil that
    /// does not fill the sky raise `Thin` above the cirrus. The bright edges of clouds add some
    /// 5 % to the sunny state of `Patchy`. Widths and relative deviations: from memory.
    pub fn hour(self) -> HourSky {
        let (states, relative_sd): (&[(f64, f64)], f64) = match self {
            Self::Clear => (&[(1.0, 1.0)], 0.07),
            Self::Thin => (&[(0.5, 0.85), (0.5, 0.65)], 0.15),
            Self::Patchy => (&[(0.55, 1.05), (0.45, 0.35)], 0.20),
            Self::Grey => (&[(0.5, 0.37), (0.5, 0.23)], 0.35),
            Self::Dark => (&[(1.0, 0.15)], 0.45),
        };
        HourSky {
            states: states
                .iter()
                .map(|&(weight, clear_sky_index)| SkyState {
                    weight,
                    clear_sky_index,
                })
                .collect(),
            relative_sd,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn weights_add_up_and_skies_darken_in_order() {
        let mut brighter = f64::INFINITY;
        for sky in Sky::ALL {
            let hour = sky.hour();
            let whole: f64 = hour.states.iter().map(|state| state.weight).sum();
            assert!((whole - 1.0).abs() < 1e-12, "{sky:?}");
            assert!(hour.mean_index() < brighter, "{sky:?}");
            brighter = hour.mean_index();
        }
    }
}

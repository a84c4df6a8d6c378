//! A panel's curve of current against voltage at one light and one cell temperature.

/// Steps after which Newton's method is stopped. It needs about 5, and 30 from far off; each
/// step from the steep side moves by at least one thermal voltage.
const MAX_STEPS: usize = 200;

/// Where on its curve a panel works.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OperatingPoint {
    /// At the panel's terminals. \[V\]
    pub voltage_v: f64,
    /// Out of the panel. \[A\]
    pub current_a: f64,
}

impl OperatingPoint {
    /// Of a panel in the dark.
    pub const NONE: Self = Self {
        voltage_v: 0.0,
        current_a: 0.0,
    };

    /// Power out of the panel. \[W\]
    pub fn power_w(&self) -> f64 {
        self.voltage_v * self.current_a
    }
}

/// The single-diode equation, I = IL - I0 (exp((V + I Rs)/a) - 1) - (V + I Rs)/Rsh.
///
/// It is solved in the diode's own voltage Vd = V + I Rs, in which the current is explicit: no
/// exponential is ever taken of more than the open-circuit voltage over a, so nothing overflows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SingleDiode {
    /// Light current, IL; 0 or more. \[A\]
    pub light_a: f64,
    /// Diode saturation current, I0; above 0. \[A\]
    pub saturation_a: f64,
    /// Series resistance, Rs; 0 or more. \[ohm\]
    pub series_ohm: f64,
    /// Shunt conductance, 1/Rsh. A fit may make it negative: then at most a fifth of IL over the
    /// open-circuit voltage. \[S\]
    pub shunt_s: f64,
    /// Modified ideality factor n Ns k T/q, a; above 0. \[V\]
    pub thermal_v: f64,
}

impl SingleDiode {
    /// Current and its slope at a diode voltage. \[A\], \[A/V\]
    fn at_diode(&self, diode_v: f64) -> (f64, f64) {
        let grown = self.saturation_a * libm::exp(diode_v / self.thermal_v);
        let current = self.light_a + self.saturation_a - grown - self.shunt_s * diode_v;
        (current, -grown / self.thermal_v - self.shunt_s)
    }

    /// A voltage at or above open circuit, where there is light.
    fn beyond_open_v(&self) -> f64 {
        // Without a shunt the logarithm is the answer, with one it is above it. A negative shunt
        // adds a current that is known once the voltage is, to within a factor of two.
        let open = |current_a: f64| self.thermal_v * libm::log1p(current_a / self.saturation_a);
        let extra_a = (-self.shunt_s).max(0.0) * 2.0 * open(self.light_a);
        open(self.light_a + extra_a)
    }

    /// Open-circuit voltage. \[V\]
    pub fn open_circuit_v(&self) -> f64 {
        if self.light_a <= 0.0 {
            return 0.0;
        }
        // The current is concave, so that Newton's method closes in from above and never passes
        // the root.
        let mut v = self.beyond_open_v();
        for _ in 0..MAX_STEPS {
            let (current, slope) = self.at_diode(v);
            let step = current / slope;
            v -= step;
            if step.abs() <= 1e-12 * v.abs() {
                break;
            }
        }
        v.max(0.0)
    }

    /// Current at a voltage at the terminals; negative above the open-circuit voltage. \[A\]
    ///
    /// # Arguments
    ///
    /// * `voltage_v`: 0 to a little above the open-circuit voltage. \[V\]
    pub fn current_a(&self, voltage_v: f64) -> f64 {
        self.at_diode(self.crossing(self.series_ohm, voltage_v)).0
    }

    /// Short-circuit current. \[A\]
    pub fn short_circuit_a(&self) -> f64 {
        self.current_a(0.0)
    }

    /// Where the panel works on a resistor: I(V) = V / R.
    ///
    /// # Arguments
    ///
    /// * `load_ohm`: all that lies between the terminals, 0 or more. \[ohm\]
    pub fn on_load(&self, load_ohm: f64) -> OperatingPoint {
        if self.light_a <= 0.0 {
            return OperatingPoint::NONE;
        }
        let diode_v = self.crossing(load_ohm + self.series_ohm, 0.0);
        // The line gives the current without cancellation, but for a short circuit.
        let resistance = load_ohm + self.series_ohm;
        let current_a = if 0.0 < resistance {
            diode_v / resistance
        } else {
            self.at_diode(diode_v).0
        };
        OperatingPoint {
            voltage_v: current_a * load_ohm,
            current_a,
        }
    }

    /// Diode voltage at which Vd = I(Vd) r + v: where the curve meets a resistance behind a
    /// source of voltage.
    fn crossing(&self, resistance_ohm: f64, source_v: f64) -> f64 {
        // Both are to the right of the crossing; from there Newton's method on a concave function
        // closes in from one side.
        let open_v = self.beyond_open_v().max(source_v);
        let most_a = self.light_a + (-self.shunt_s).max(0.0) * open_v;
        let mut v = (most_a * resistance_ohm + source_v).min(open_v);
        for _ in 0..MAX_STEPS {
            let (current, slope) = self.at_diode(v);
            let step = (current * resistance_ohm - v + source_v) / (slope * resistance_ohm - 1.0);
            v -= step;
            if step.abs() <= 1e-12 * v.abs() {
                break;
            }
        }
        v
    }

    /// The maximum-power point.
    pub fn max_power(&self) -> OperatingPoint {
        let open_v = self.open_circuit_v();
        if open_v <= 0.0 {
            return OperatingPoint::NONE;
        }
        // dP/dVd = 0: positive at 0, negative at open circuit, and once zero between, since the
        // power has one maximum. Newton's steps, halving where one would leave the bracket, from
        // the answer for a diode without resistances.
        let (mut low, mut high) = (0.0, open_v);
        let mut v = open_v - self.thermal_v * libm::log1p(open_v / self.thermal_v);
        for _ in 0..MAX_STEPS {
            let (current, slope) = self.at_diode(v);
            let curvature = (slope + self.shunt_s) / self.thermal_v;
            let lever = v - 2.0 * current * self.series_ohm;
            let value = current + slope * lever;
            if 0.0 < value {
                low = v;
            } else {
                high = v;
            }
            let growth = slope + curvature * lever + slope * (1.0 - 2.0 * slope * self.series_ohm);
            let newton = v - value / growth;
            let next = if low < newton && newton < high {
                newton
            } else {
                0.5 * (low + high)
            };
            let step = next - v;
            v = next;
            if step.abs() <= 1e-9 * v {
                break;
            }
        }
        let (current_a, _) = self.at_diode(v);
        OperatingPoint {
            voltage_v: v - current_a * self.series_ohm,
            current_a,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn five_points_of_a_known_curve() {
        // pvlib 0.16.1, pvsystem.singlediode.
        let diode = SingleDiode {
            light_a: 7.0,
            saturation_a: 6e-7,
            series_ohm: 0.1,
            shunt_s: 1.0 / 20.0,
            thermal_v: 0.5,
        };
        let best = diode.max_power();
        for (actual, expected) in [
            (diode.short_circuit_a(), 6.965_172),
            (diode.open_circuit_v(), 8.106_300),
            (best.current_a, 6.136_267),
            (best.voltage_v, 6.224_339),
            (best.power_w(), 38.194_211),
        ] {
            assert!((actual - expected).abs() < 1e-5, "{actual} for {expected}");
        }
    }

    #[test]
    fn currents_of_a_generic_module() {
        // pvlib 0.16.1, pvsystem.i_from_v, parameters of an invented 100 W module.
        let diode = SingleDiode {
            light_a: 5.956_478_55,
            saturation_a: 8.629_090e-11,
            series_ohm: 0.173_182_77,
            shunt_s: 1.0 / 159.053_72,
            thermal_v: 0.866_262_22,
        };
        for (voltage, expected) in [
            (0.0, 5.95),
            (10.0, 5.8872),
            (15.0, 5.8466),
            (18.0, 5.56),
            (20.0, 3.8461),
            (21.0, 1.7177),
        ] {
            assert!(
                (diode.current_a(voltage) - expected).abs() < 1e-4,
                "{voltage}"
            );
        }
        assert!((diode.open_circuit_v() - 21.6).abs() < 1e-4);
    }

    #[test]
    fn dark_panel_gives_nothing() {
        let dark = SingleDiode {
            light_a: 0.0,
            saturation_a: 1e-10,
            series_ohm: 0.2,
            shunt_s: 0.0,
            thermal_v: 0.85,
        };
        assert_eq!(dark.on_load(3.0), OperatingPoint::NONE);
        assert_eq!(dark.max_power(), OperatingPoint::NONE);
        assert!(dark.short_circuit_a().abs() < 1e-15);
    }

    proptest! {
        /// Any load from short to open circuit, in any light down to starlight: the point lies on
        /// the curve and on the load's line, and below the maximum power.
        #[test]
        fn a_load_sits_on_the_curve_and_below_the_maximum(
            light in -9.0..1.5_f64, saturation in -14.0..-5.0_f64, series in 0.0..1.0_f64,
            shunt in -0.15..0.3_f64, thermal in 0.3..3.0_f64, load in -4.0..6.0_f64,
        ) {
            let mut diode = SingleDiode {
                light_a: 10_f64.powf(light),
                saturation_a: 10_f64.powf(saturation),
                series_ohm: series,
                shunt_s: 0.0,
                thermal_v: thermal,
            };
            diode.shunt_s = shunt * diode.light_a / diode.open_circuit_v();
            let load = 10_f64.powf(load);
            let point = diode.on_load(load);
            prop_assert!(0.0 <= point.power_w() && point.power_w().is_finite());
            let on_curve = diode.at_diode(point.voltage_v + point.current_a * series).0;
            // Near open circuit the current is the small rest of two large ones.
            prop_assert!((on_curve - point.current_a).abs() < 1e-9 * diode.light_a);
            let best = diode.max_power();
            prop_assert!(point.power_w() <= best.power_w() * (1.0 + 1e-9));
            let beside = |factor: f64| diode.on_load(factor * best.voltage_v / best.current_a);
            for factor in [0.98, 1.02] {
                prop_assert!(beside(factor).power_w() <= best.power_w() * (1.0 + 1e-9));
            }
            prop_assert!((beside(1.0).power_w() / best.power_w() - 1.0).abs() < 1e-7);
        }
    }
}

//! What the cases share.

use model::enthalpy::EnthalpyCurve;
use model::media::Medium;
use model::network::{
    Event, Ledger, Network, NetworkParts, NodeRow, Pot, Seat, Span, State, Watch, run,
};
use model::place::{AirYear, Place};
use model::seat::{INNER_FILM_W_M2K, store_to_food_w_m2k};
use model::sun::{DayLog, IrradianceSeries, Plane, Setting, Sky, Unlogged};

pub(crate) const AIR_C: f64 = 22.0;
/// Base of a pot of 20 cm. [m²]
pub(crate) const BASE_M2: f64 = 0.0314;

pub(crate) fn store(charges: &[(f64, Medium)]) -> EnthalpyCurve {
    let media: Vec<_> = charges
        .iter()
        .map(|&(mass_kg, medium)| (mass_kg, medium.into()))
        .collect();
    EnthalpyCurve::new(&media).unwrap()
}

/// Shut, at sea level, without thermostat, its seat on a base of 20 cm through this contact.
pub(crate) fn parts(g_loss_w_k: f64, contact_w_m2k: f64) -> NetworkParts {
    let food_w_m2k = store_to_food_w_m2k(contact_w_m2k, INNER_FILM_W_M2K.value);
    NetworkParts {
        row: NodeRow::SINGLE,
        g_loss_w_k,
        c_jacket_j_k: 2500.0,
        seat: Seat {
            g_contact_w_k: BASE_M2 * food_w_m2k,
            layer: None,
        },
        g_lid_w_k: 0.0,
        cutout_c: None,
        altitude_m: 0.0,
    }
}

/// A thin pot inside the cooker, its lid on.
pub(crate) fn pot(water_kg: f64) -> Pot {
    Pot {
        c_dry_j_k: 285.0,
        water_kg,
        t_c: AIR_C,
        g_air_w_k: 0.2,
        thickness: 1.0,
        surface: None,
        cook: None,
    }
}

#[derive(Default)]
struct FirstBoil(Option<f64>);

impl Watch for FirstBoil {
    fn event(&mut self, event: Event, _: &Network<'_>, state: &State) {
        if event == Event::Boils {
            self.0.get_or_insert(state.time_s());
        }
    }
}

/// Runs for some minutes; when the pot in it first boils, min from the start of this run.
pub(crate) fn minutes(
    net: &Network<'_>,
    state: &mut State,
    length_min: f64,
    heater_w: f64,
) -> Option<f64> {
    let start_s = state.time_s();
    let mut boil = FirstBoil::default();
    let span = Span {
        duration_s: 60.0 * length_min,
        heater_w,
        air_c: AIR_C,
    };
    run(net, state, &span, &mut Ledger::default(), &mut boil).unwrap();
    boil.0.map(|at_s| (at_s - start_s) / 60.0)
}

/// A pot on a store at one temperature, for up to four hours.
pub(crate) fn boils_min(net: &Network<'_>, store_c: f64, water_kg: f64) -> Option<f64> {
    let mut state = State::new(net, 0.0, store_c, 0.5 * (store_c + AIR_C)).unwrap();
    state.put_pot_in(pot(water_kg)).unwrap();
    minutes(net, &mut state, 240.0, 0.0)
}

/// A day in September at 12 degrees north, in steps of 30 min.
pub(crate) fn day(sky: Sky) -> IrradianceSeries {
    let setting = Setting {
        place: Place {
            latitude_deg: 12.0,
            longitude_deg: 37.5,
            altitude_m: 0.0,
            utc_offset_min: 150,
        },
        air: AirYear {
            day_c: [26.0; 12],
            night_c: [18.0; 12],
        },
        plane: Plane {
            tilt_deg: 12.0,
            azimuth_deg: 180.0,
            albedo: 0.2,
        },
        wind_m_s: 1.0,
    };
    let log = DayLog::Hourly([Some(sky); 24]);
    IrradianceSeries::new(&setting, 20_700, &log, Unlogged::MeanOfLogged, 30).unwrap()
}

//! The report on paper.

use std::fmt::{self, Display, Formatter};

use crate::score::{Banded, Claim, Coverage, Pot, Tenth, brier, coverage, median, tenths};

/// First day that counts for skill and the store.
const SETTLED_DAY: u32 = 7;
/// Days whose store is told.
const DAYS: [u32; 5] = [1, 3, 7, 14, 30];
/// A tenth with fewer forecasts says nothing.
const LEAST_COUNT: usize = 100;

/// All pots with or without a thermometer.
pub(crate) struct Report<'a> {
    pub(crate) pots: &'a [Pot],
    pub(crate) with_thermometer: bool,
}

impl Report<'_> {
    fn claims(&self, from_day: u32, claim: impl Fn(&Pot) -> Claim) -> Vec<Claim> {
        self.pots
            .iter()
            .filter(|pot| from_day <= pot.day)
            .map(claim)
            .collect()
    }

    fn tenths(&self, claim: impl Fn(&Pot) -> Claim) -> [Tenth; 10] {
        let claims = self.pots.iter().map(|pot| (pot.household, claim(pot)));
        tenths(&claims.collect::<Vec<_>>())
    }

    fn store_errors(&self, is_day: impl Fn(u32) -> bool) -> Vec<f64> {
        self.pots
            .iter()
            .filter(|pot| is_day(pot.day))
            .map(|pot| (pot.said.store_c[2] - pot.store_c).abs())
            .collect()
    }

    /// Coverage of the three bands. A time counts where it was at least even that it would come
    /// before the meal: what a pot would have done in another night is nobody's question.
    fn bands(&self) -> [(&'static str, Coverage); 3] {
        let of = |banded: &dyn Fn(&Pot) -> Banded| {
            let all: Vec<Banded> = self.pots.iter().map(banded).collect();
            let likely: Vec<_> = all.into_iter().filter(|b| 0.5 <= b.likely).collect();
            coverage(&likely)
        };
        let minutes = |band_s: [f64; 5]| band_s.map(|at_s| at_s / 60.0);
        let boil = of(&|pot| Banded {
            band: minutes(pot.said.boil_s),
            truth: pot.boil_s / 60.0,
            likely: pot.said.boils,
        });
        let ready = of(&|pot| Banded {
            band: minutes(pot.said.ready_s),
            truth: pot.ready_s / 60.0,
            likely: pot.said.ready,
        });
        let store = of(&|pot| Banded {
            band: pot.said.store_c,
            truth: pot.store_c,
            likely: 1.0,
        });
        [
            ("time to the boil, min", boil),
            ("time till done, min", ready),
            ("store, K", store),
        ]
    }

    /// Where the errors come from: forecast against outcome, and the store's bias, by build.
    fn by_cooker(&self, f: &mut Formatter<'_>) -> fmt::Result {
        let mut keys: Vec<&str> = self.pots.iter().map(|pot| pot.preset).collect();
        keys.sort_unstable();
        keys.dedup();
        writeln!(
            f,
            "by cooker                     n  boils: said  came   done: said  came   \
             boil late/said   store bias   band holds: boil  store"
        )?;
        for key in keys {
            let own: Vec<Pot> = self
                .pots
                .iter()
                .filter(|pot| pot.preset == key)
                .cloned()
                .collect();
            let report = Report {
                pots: &own,
                with_thermometer: self.with_thermometer,
            };
            let mean = |of: &dyn Fn(&Pot) -> f64| {
                own.iter().map(of).sum::<f64>() / own.len().max(1) as f64
            };
            let is = |came: bool| f64::from(u8::from(came));
            let mut bias: Vec<f64> = own
                .iter()
                .map(|pot| pot.said.store_c[2] - pot.store_c)
                .collect();
            let mut late: Vec<f64> = own
                .iter()
                .filter(|pot| pot.boiled && pot.said.boil_s[2].is_finite())
                .map(|pot| pot.boil_s / pot.said.boil_s[2])
                .collect();
            let [boil, _, store] = report.bands();
            writeln!(
                f,
                "  {key:24} {:5}        {:.3}  {:.3}        {:.3}  {:.3}             {:.2}        {:+.1}              {:.3}  {:.3}",
                own.len(),
                mean(&|pot| pot.said.boils),
                mean(&|pot| is(pot.boiled)),
                mean(&|pot| pot.said.ready),
                mean(&|pot| is(pot.ready)),
                median(&mut late),
                median(&mut bias),
                boil.1.nine_tenths,
                store.1.nine_tenths,
            )?;
        }
        writeln!(f)
    }

    /// Each requirement with its figure and whether it is met.
    fn requirements(&self) -> Vec<(String, bool)> {
        let mut lines = Vec::new();
        for (what, coverage) in self.bands() {
            lines.push((
                format!(
                    "90 % band of {what}: {:.1} %, asked 88 to 92",
                    100.0 * coverage.nine_tenths
                ),
                (0.88..=0.92).contains(&coverage.nine_tenths),
            ));
        }
        for (what, claim) in questions() {
            let counted = |tenth: &Tenth| LEAST_COUNT <= tenth.count;
            let all = self.tenths(claim).into_iter().filter(counted);
            let worst = all.max_by(|a, b| a.off().total_cmp(&b.off()));
            let worst = worst.unwrap_or_default();
            let off = worst.off();
            lines.push((
                format!(
                    "worst tenth of {what}: {off:.3} off ({:.1} standard errors of {} pots in {} \
                     households), asked 0.05 at most",
                    worst.errors_off(),
                    worst.count,
                    worst.households
                ),
                off <= 0.05,
            ));
            let (_, _, skill) = brier(&self.claims(SETTLED_DAY, claim));
            lines.push((
                format!("Brier skill of {what} from day 7: {skill:.2}, asked 0.5"),
                0.5 <= skill,
            ));
        }
        let asked_k = if self.with_thermometer { 6.0 } else { 12.0 };
        let error_k = median(&mut self.store_errors(|day| SETTLED_DAY <= day));
        lines.push((
            format!("store from day 7: {error_k:.1} K off (median), asked {asked_k:.0}"),
            error_k <= asked_k,
        ));
        lines
    }
}

/// A question and how to read forecast and outcome off a pot.
type Question = (&'static str, fn(&Pot) -> Claim);

/// The two questions.
fn questions() -> [Question; 2] {
    [
        ("boils", |pot| (pot.said.boils, pot.boiled)),
        ("done by the meal", |pot| (pot.said.ready, pot.ready)),
    ]
}

impl Display for Report<'_> {
    fn fmt(&self, f: &mut Formatter<'_>) -> fmt::Result {
        let thermometer = if self.with_thermometer {
            "one reading a day"
        } else {
            "no thermometer"
        };
        writeln!(f, "== {thermometer}: {} pots ==", self.pots.len())?;
        for (what, claim) in questions() {
            writeln!(
                f,
                "\n{what}: forecast   pots  households   mean   observed     off   \
                 standard error (by household)"
            )?;
            for (place, tenth) in self.tenths(claim).iter().enumerate() {
                let Tenth {
                    count,
                    households,
                    forecast,
                    observed,
                    error,
                } = tenth;
                let low = 0.1 * place as f64;
                writeln!(
                    f,
                    "  {low:.1} to {:.1}         {count:5}  {households:10}  {forecast:.3}      {observed:.3}  \
                     {:+.3}  {error:.3}",
                    low + 0.1,
                    observed - forecast
                )?;
            }
            for (when, from_day) in [("all days", 1), ("from day 7", SETTLED_DAY)] {
                let (own, base, skill) = brier(&self.claims(from_day, claim));
                writeln!(
                    f,
                    "  Brier {own:.4}, base rate {base:.4}, skill {skill:.3} ({when})"
                )?;
            }
        }
        writeln!(f, "\nbands: 50 %   90 %   below   above   median width")?;
        for (what, c) in self.bands() {
            writeln!(
                f,
                "  {what:24} {:.3}  {:.3}  {:.3}  {:.3}  {:.0}   n {}",
                c.half, c.nine_tenths, c.below, c.above, c.width, c.count
            )?;
        }
        write!(f, "\nstore, median error in K by day:")?;
        for day in DAYS {
            let mut errors = self.store_errors(|of| of == day);
            if !errors.is_empty() {
                write!(f, "  {day}: {:.1}", median(&mut errors))?;
            }
        }
        writeln!(f, "\n")?;
        self.by_cooker(f)?;
        for (line, met) in self.requirements() {
            writeln!(f, "{}  {line}", if met { "met    " } else { "NOT MET" })?;
        }
        Ok(())
    }
}

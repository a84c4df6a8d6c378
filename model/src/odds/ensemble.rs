//! All members side by side.

use std::ops::Range;

use super::build::{Build, small};
use super::dishes::DISHES;
use super::edges::{Edges, inside};
use super::load::{Load, Slowing};
use super::member::{Account, Course, Member, Phase, Stretch};
use super::noise::{Noise, Purpose};
use super::prior::{
    AIR_DAY_SD_K, CONTACT_POT_SD, DRY_SD, LEFT_AJAR, LOSS_DAY_SD, MULTIPLIERS, Multiplier, OFFSETS,
    Offset, START_SD_K, THICK_POT_SD, WATER_SD, cook_log_sd, slowing_sd, steam_log_sd,
};
use super::seconds;
use super::sky::{STEP_S, SkyDay, SkyStep};
use crate::journal::Meal;
use crate::local_time::{Day, LocalTime};
use crate::network::MAX_NODES;
use crate::pot::Lid;

/// Places of what a member carries, each a column over all members.
pub(super) mod column {
    use super::{DISHES, MAX_NODES, MULTIPLIERS, OFFSETS};

    pub(crate) const HEAT: usize = 0;
    pub(crate) const JACKET: usize = HEAT + MAX_NODES;
    pub(crate) const OUTER: usize = JACKET + 1;
    /// A melt: liquid or not, seeded or not, and where it freezes by itself.
    pub(crate) const LIQUID: usize = OUTER + 1;
    pub(crate) const SEEDED: usize = LIQUID + 1;
    pub(crate) const NUCLEATION: usize = SEEDED + 1;
    pub(crate) const POT_C: usize = NUCLEATION + 1;
    pub(crate) const WATER: usize = POT_C + 1;
    pub(crate) const DONENESS: usize = WATER + 1;
    pub(crate) const BOIL: usize = DONENESS + 1;
    pub(crate) const BOILS_AT: usize = BOIL + 1;
    pub(crate) const DONE_AT: usize = BOILS_AT + 1;
    pub(crate) const SAFE_AT: usize = DONE_AT + 1;
    pub(crate) const DRY_AT: usize = SAFE_AT + 1;
    /// When it boils and is done by what is known to lie ahead, for reports of it.
    pub(crate) const SEEN_BOIL: usize = DRY_AT + 1;
    pub(crate) const SEEN_DONE: usize = SEEN_BOIL + 1;
    /// The day's own deviations.
    pub(crate) const SKY: usize = SEEN_DONE + 1;
    pub(crate) const AIR: usize = SKY + 1;
    pub(crate) const LOSS_DAY: usize = AIR + 1;
    /// The pot's own factors.
    pub(crate) const CONTACT_POT: usize = LOSS_DAY + 1;
    pub(crate) const POT_STEAM: usize = CONTACT_POT + 1;
    pub(crate) const COOK_TIME: usize = POT_STEAM + 1;
    /// How it slows in the cold, and from where on it cooks.
    pub(crate) const SLOWS: usize = COOK_TIME + 1;
    pub(crate) const LEAST: usize = SLOWS + 1;
    pub(crate) const DRY: usize = LEAST + 1;
    /// The multipliers, and their logarithms in standard deviations of nothing.
    pub(crate) const FACTOR: usize = DRY + 1;
    pub(crate) const LOG: usize = FACTOR + MULTIPLIERS;
    /// What is off by so many kelvins; it follows the logarithms, since both stay and are learned.
    pub(crate) const OFFSET: usize = LOG + MULTIPLIERS;
    /// How long each of the household's own dishes takes, in standard deviations.
    pub(crate) const DISH: usize = OFFSET + OFFSETS;
    pub(crate) const COUNT: usize = DISH + DISHES;
}

/// Store of a member before the first day that was logged: most are cold, some were in use. The
/// share of the way from air to cut-out is this times the square of an even chance. Inferred.
const START_SHARE: f64 = 0.8;
/// How far from a diary's first reading the store may be. Inferred. \[K\]
const START_OFF_K: f64 = 25.0;

/// The members of an estimate.
#[derive(Debug, Clone)]
pub(super) struct Ensemble {
    pub(super) at: LocalTime,
    members: usize,
    /// From one column to the next. Not a power of two, or all of a member would meet in one corner
    /// of the cache.
    stride: usize,
    columns: Vec<f64>,
    pub(super) phase: Vec<Phase>,
    /// Whether a store that is charged elsewhere has come to the kitchen since.
    pub(super) indoors: bool,
    /// Which dishes were cooked, a bit each.
    pub(super) cooked: u64,
    /// They sum to 1.
    pub(super) weight: Vec<f64>,
}

impl Ensemble {
    /// Members with multipliers from the prior, their stores as they may be before anything was
    /// logged.
    pub(super) fn new(members: usize, at: LocalTime) -> Self {
        Self {
            at,
            members,
            stride: members + 8,
            columns: vec![0.0; (members + 8) * column::COUNT],
            phase: vec![Phase::NoPot; members],
            indoors: false,
            cooked: 0,
            weight: vec![1.0 / small(members); members],
        }
    }

    pub(super) fn members(&self) -> usize {
        self.members
    }

    pub(super) fn column(&self, column: usize) -> &[f64] {
        let from = column * self.stride;
        self.columns.get(from..from + self.members).unwrap_or(&[])
    }

    pub(super) fn column_mut(&mut self, column: usize) -> &mut [f64] {
        let from = column * self.stride;
        self.columns
            .get_mut(from..from + self.members)
            .unwrap_or(&mut [])
    }

    pub(super) fn get(&self, column: usize, member: usize) -> f64 {
        self.columns[column * self.stride + member]
    }

    pub(super) fn set(&mut self, column: usize, member: usize, value: f64) {
        self.columns[column * self.stride + member] = value;
    }

    /// Draws one multiplier anew from its prior.
    pub(super) fn draw(&mut self, multiplier: Multiplier, log_sd: f64, noise: Noise) {
        let noise = noise.at(multiplier as i64);
        for member in 0..self.members {
            let log = log_sd * noise.normal(member);
            self.set(column::LOG + multiplier.index(), member, log);
        }
        self.renew_factors();
    }

    /// Draws what is off by some kelvins anew from its prior.
    pub(super) fn draw_offset(&mut self, offset: Offset, sd_k: f64, noise: Noise) {
        // Behind the multipliers' addresses.
        let noise = noise.at(MULTIPLIERS as i64 + offset as i64);
        for member in 0..self.members {
            let off_k = sd_k * noise.normal(member);
            self.set(column::OFFSET + offset.index(), member, off_k);
        }
    }

    /// Brings the multipliers in line with their logarithms.
    pub(super) fn renew_factors(&mut self) {
        for multiplier in 0..MULTIPLIERS {
            for member in 0..self.members {
                let log = self.get(column::LOG + multiplier, member);
                self.set(column::FACTOR + multiplier, member, libm::exp(log));
            }
        }
    }

    /// Puts each store where it may be before anything was logged.
    pub(super) fn start(&mut self, build: &Build, air_c: f64, noise: Noise) {
        for member in 0..self.members {
            let even = noise.uniform(member);
            let share = START_SHARE * even * even;
            let store_c = air_c + share * (build.cutout_c - air_c).max(0.0);
            self.set_store_c(build, member, store_c);
            self.set_jacket(build, member, air_c);
        }
    }

    /// Puts each store near what the diary's first report is, a reading that is yet to be weighed.
    pub(super) fn start_near(&mut self, build: &Build, air_c: f64, read_c: f64, noise: Noise) {
        for member in 0..self.members {
            let off_k = START_OFF_K * (2.0 * noise.uniform(member) - 1.0);
            let store_c = (read_c + off_k).max(air_c.min(read_c));
            self.set_store_c(build, member, store_c);
            self.set_jacket(build, member, air_c);
        }
    }

    /// Puts a member's store at one temperature.
    pub(super) fn set_store_c(&mut self, build: &Build, member: usize, store_c: f64) {
        let capacity = self.get(column::FACTOR + Multiplier::Capacity.index(), member);
        let is_liquid = build
            .sleep
            .as_ref()
            .is_some_and(|sleep| sleep.liquid_c <= store_c);
        self.set(column::LIQUID, member, f64::from(u8::from(is_liquid)));
        let heat_j = build.heat_j(store_c - self.offset(Offset::Melt, member)) * capacity;
        for node in 0..build.row.count {
            let share = build.row.mass_share[node];
            self.set(column::HEAT + node, member, share * heat_j);
        }
    }

    /// Heat of the whole store per unit of its multiplier, mixed. \[J\]
    pub(super) fn store_j(&self, build: &Build, member: usize) -> f64 {
        let capacity = self.get(column::FACTOR + Multiplier::Capacity.index(), member);
        let heat_j: f64 = (0..build.row.count)
            .map(|node| self.get(column::HEAT + node, member))
            .sum();
        heat_j / capacity
    }

    /// Temperature of the store, mixed. [°C]
    pub(super) fn store_c(&self, build: &Build, member: usize) -> f64 {
        self.temperature_c(build, member, self.store_j(build, member))
    }

    /// Temperature of the store under the seat. [°C]
    pub(super) fn seat_c(&self, build: &Build, member: usize) -> f64 {
        let capacity = self.get(column::FACTOR + Multiplier::Capacity.index(), member);
        let share = build.row.mass_share[0];
        let whole_j = self.get(column::HEAT, member) / (share * capacity);
        self.temperature_c(build, member, whole_j)
    }

    /// Temperature of a member's store with this heat in the whole of it. [°C]
    pub(super) fn temperature_c(&self, build: &Build, member: usize, whole_j: f64) -> f64 {
        let told_c = if 0.5 < self.get(column::LIQUID, member) {
            build.liquid_c(whole_j).0
        } else {
            build.store_c(whole_j).0
        };
        told_c + self.offset(Offset::Melt, member)
    }

    /// What is off by so many kelvins.
    pub(super) fn offset(&self, offset: Offset, member: usize) -> f64 {
        self.get(column::OFFSET + offset.index(), member)
    }

    /// The day's own deviations begin.
    pub(super) fn begin_day(&mut self, day: Day, seed: u64) {
        let at = |purpose| Noise::new(seed, purpose).at(i64::from(day.0));
        let (sky, air, loss) = (
            at(Purpose::SkyDay),
            at(Purpose::AirDay),
            at(Purpose::LossDay),
        );
        for member in 0..self.members {
            self.set(column::SKY, member, sky.normal(member));
            self.set(column::AIR, member, AIR_DAY_SD_K * air.normal(member));
            let factor = libm::exp(LOSS_DAY_SD * loss.normal(member));
            self.set(column::LOSS_DAY, member, factor);
        }
    }

    /// A pot goes in; one that is in comes out.
    pub(super) fn put_in(&mut self, build: &Build, load: &Load, meal: &Meal, seed: u64) {
        let pot = Noise::new(seed, Purpose::Pot)
            .at(i64::from(meal.eat_at.day().0))
            .at(meal.dish as i64);
        let [water, start, contact, steam, cook, dry, slows, least] =
            [1, 2, 3, 4, 5, 6, 7, 8].map(|of| pot.at(of));
        let contact_sd = if 1.0 < load.thickness {
            libm::hypot(CONTACT_POT_SD, THICK_POT_SD)
        } else {
            CONTACT_POT_SD
        };
        let steam_sd = steam_log_sd(meal.lid);
        let ajar = pot.at(10);
        let open = |lid: Lid| lid.evaporation_share().value;
        let (ajar_share, ajar_steam) = match meal.lid {
            Lid::On => (LEFT_AJAR, open(Lid::Ajar) / open(Lid::On)),
            Lid::Ajar | Lid::Off => (0.0, 1.0),
        };
        let [common_sd, dish_sd, own_sd] = cook_log_sd(meal.dish);
        self.cook_again(meal.dish, pot.at(9));
        let (slows_sd, least_sd_k) = slowing_sd(meal.dish);
        let common = column::LOG + Multiplier::of_cooking(meal.dish).index();
        let safe_at_s = if 0.0 < load.full_boil_s {
            f64::INFINITY
        } else {
            f64::NEG_INFINITY
        };
        for member in 0..self.members {
            let factor = |sd: f64, noise: Noise| libm::exp(sd * noise.normal(member));
            let cook_log = common_sd * self.get(common, member)
                + dish_sd * self.get(column::DISH + meal.dish as usize, member)
                + own_sd * cook.normal(member);
            let is_ajar = ajar.uniform(member) < ajar_share;
            let steams = if is_ajar { ajar_steam } else { 1.0 };
            let values = [
                (
                    column::POT_C,
                    load.start_c + START_SD_K * start.normal(member),
                ),
                (column::WATER, load.water_kg * factor(WATER_SD, water)),
                (column::DONENESS, 0.0),
                (column::BOIL, 0.0),
                (column::BOILS_AT, f64::INFINITY),
                (column::DONE_AT, f64::INFINITY),
                (column::SAFE_AT, safe_at_s),
                (column::DRY_AT, f64::INFINITY),
                (column::CONTACT_POT, factor(contact_sd, contact)),
                (column::POT_STEAM, steams * factor(steam_sd, steam)),
                (column::COOK_TIME, libm::exp(cook_log)),
                (column::SLOWS, factor(slows_sd, slows)),
                (column::LEAST, least_sd_k * least.normal(member)),
                (column::DRY, factor(DRY_SD, dry)),
            ];
            for (column, value) in values {
                self.set(column, member, value);
            }
            self.phase[member] = Phase::Simple;
            self.seed_with(build, member);
        }
    }

    /// All pots but those of some members are left out of account.
    pub(super) fn keep_pots(&mut self, of: &Range<usize>) {
        for (member, phase) in self.phase.iter_mut().enumerate() {
            if !of.contains(&member) {
                *phase = Phase::NoPot;
            }
        }
    }

    /// The pot comes out.
    pub(super) fn take_out(&mut self) {
        self.column_mut(column::SEEDED).fill(0.0);
        self.phase.fill(Phase::NoPot);
    }

    /// Carries every member to an instant of the same day, or to the next midnight.
    pub(super) fn carry(
        &mut self,
        course: &Course<'_>,
        sky: &SkyDay,
        edges: &Edges,
        seed: u64,
        to: LocalTime,
    ) {
        let hours = Noise::new(seed, Purpose::SkyHour).at(i64::from(self.at.day().0));
        while self.at < to {
            let at = self.at;
            let limit = edges.next(at, to);
            let (steps, next) = self.stretch(course.build, sky, at, limit);
            let Some((step, after)) = steps.first().zip(steps.last()) else {
                break;
            };
            // A can in the kitchen is not where it is charged.
            let away = course.build.carried.is_some() && course.load.is_some();
            let is_lit = steps.iter().any(SkyStep::is_lit);
            if !away && is_lit {
                self.indoors = false;
            }
            let top_up_w = edges.top_up_w(at);
            let is_off = away || !is_lit || inside(&edges.off, at);
            let air_c = steps.iter().map(|step| step.air_c).sum::<f64>() / small(steps.len());
            let open = inside(&edges.open, at);
            let hour = hours.at(i64::try_from(at.hour()).unwrap_or(0));
            let start_s = seconds(at);
            let duration_s = seconds(next) - start_s;
            let one_node = course.build.row.count == 1;
            for member in 0..self.members {
                if course.pots_only && self.phase[member] == Phase::NoPot {
                    continue;
                }
                let sun_w = if is_off {
                    0.0
                } else {
                    let charging = Multiplier::Charging.index();
                    let (day_sd, hour_sd) = (self.get(column::SKY, member), hour.normal(member));
                    let both_w = step.heater_w(day_sd, hour_sd) + after.heater_w(day_sd, hour_sd);
                    0.5 * both_w * self.get(column::FACTOR + charging, member)
                };
                let stretch = Stretch {
                    start_s,
                    duration_s,
                    heater_w: sun_w + top_up_w,
                    air_c: air_c + self.get(column::AIR, member) + self.offset(Offset::Air, member),
                    open,
                };
                if one_node {
                    self.carry_one::<1>(course, member, &stretch);
                } else {
                    self.carry_one::<MAX_NODES>(course, member, &stretch);
                }
            }
            self.at = next;
        }
    }

    /// The half hours that are one stretch from an instant on, and where it ends: with a pot in one,
    /// else an hour, or two by night of a store that conducts poorly. Those of one hour have their deviation in common.
    fn stretch<'s>(
        &self,
        build: &Build,
        sky: &'s SkyDay,
        at: LocalTime,
        limit: LocalTime,
    ) -> (&'s [SkyStep], LocalTime) {
        let place = usize::try_from(at.second_of_day() / STEP_S).unwrap_or(0);
        let is_whole = at.second_of_day() % STEP_S == 0;
        let is_slow = 1 < build.row.count && !build.melts_in_nodes();
        let is_idle = self.phase.iter().all(|phase| *phase == Phase::NoPot);
        for (count, count_s) in [(4, 4 * STEP_S), (2, 2 * STEP_S)] {
            let end = at.plus_s(count_s);
            let fits = is_whole && is_idle && place.is_multiple_of(count) && end <= limit;
            if let Some(steps) = sky.get(place..place + count).filter(|_| fits)
                && (count == 2 || is_slow && !steps.iter().any(SkyStep::is_lit))
            {
                return (steps, end);
            }
        }
        let end = at.plus_s(1).ceil_to_s(STEP_S).min(limit);
        (sky.get(place..place + 1).unwrap_or(&[]), end)
    }

    fn carry_one<const N: usize>(&mut self, course: &Course<'_>, member: usize, over: &Stretch) {
        let mut one = self.member::<N>(course.build, member);
        course.carry(&mut one, over, &mut Account::default());
        self.keep(course.build, member, &one);
    }

    fn member<const N: usize>(&self, build: &Build, member: usize) -> Member<N> {
        let get = |column| self.get(column, member);
        let factor = |multiplier: Multiplier| get(column::FACTOR + multiplier.index());
        let mut heat_j = [0.0; N];
        for (node, heat_j) in heat_j.iter_mut().enumerate().take(build.row.count) {
            *heat_j = get(column::HEAT + node);
        }
        Member {
            heat_j,
            jacket_c: get(column::JACKET),
            outer_c: get(column::OUTER),
            is_liquid: 0.5 < get(column::LIQUID),
            is_seeded: 0.5 < get(column::SEEDED),
            nucleation_c: get(column::NUCLEATION),
            phase: self.phase[member],
            pot_c: get(column::POT_C),
            water_kg: get(column::WATER),
            doneness: get(column::DONENESS),
            boil_s: get(column::BOIL),
            boils_at_s: get(column::BOILS_AT),
            done_at_s: get(column::DONE_AT),
            safe_at_s: get(column::SAFE_AT),
            dry_at_s: get(column::DRY_AT),
            capacity: factor(Multiplier::Capacity),
            tilt: self.offset(Offset::Heater, member),
            cut_out_k: self.offset(Offset::CutOut, member),
            melt_k: self.offset(Offset::Melt, member),
            loss: factor(Multiplier::Loss) * get(column::LOSS_DAY),
            contact: factor(Multiplier::Contact) * get(column::CONTACT_POT),
            inside: factor(Multiplier::Contact),
            dry: get(column::DRY),
            pot_air: factor(Multiplier::PotLoss),
            pot_steam: get(column::POT_STEAM),
            cook_time: get(column::COOK_TIME),
            slowing: Slowing {
                times: get(column::SLOWS),
                least_k: get(column::LEAST),
            },
        }
    }

    fn keep<const N: usize>(&mut self, build: &Build, member: usize, one: &Member<N>) {
        for (node, heat_j) in one.heat_j.iter().enumerate().take(build.row.count) {
            self.set(column::HEAT + node, member, *heat_j);
        }
        self.set(column::JACKET, member, one.jacket_c);
        self.set(column::OUTER, member, one.outer_c);
        self.set(column::LIQUID, member, f64::from(u8::from(one.is_liquid)));
        if self.phase[member] == Phase::NoPot {
            return;
        }
        self.phase[member] = one.phase;
        for (column, value) in [
            (column::POT_C, one.pot_c),
            (column::WATER, one.water_kg),
            (column::DONENESS, one.doneness),
            (column::BOIL, one.boil_s),
            (column::BOILS_AT, one.boils_at_s),
            (column::DONE_AT, one.done_at_s),
            (column::SAFE_AT, one.safe_at_s),
            (column::DRY_AT, one.dry_at_s),
        ] {
            self.set(column, member, value);
        }
    }
}

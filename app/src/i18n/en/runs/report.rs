//! English: test runs beside each other.

use model::bench::{Parameter, Worth};

use crate::i18n::strings::runs::report::{ConditionHeads, FigureNames, Named, Report};

pub(super) const REPORT: Report = Report {
    title: "Compare",
    printed_title: "Test report",
    dated: |day| format!("Written on {day}"),
    choose: "Runs to lay beside each other",
    at_most: |count| format!("At most {count} at a time."),
    no_runs: "There is no test run yet.",
    run_line: |cooker, kind, day| format!("{cooker} · {kind} · {day}"),
    aligned: "Laid over each other where",
    at_start: "the run starts",
    at_pot: "the pot goes in",
    drawn: "Drawn is",
    plot_store: "The store",
    plot_pot: "The pot",
    curve: |name, from, to, time| format!("{name} goes from {from} to {to} in {time}."),
    in_file: |name| format!("The readings of {name} are being fetched from their file."),
    file_gone: |name| format!("The readings of {name} were in a file that can’t be read any more."),
    not_read: |name| format!("{name} has no readings of this."),
    lettered: |letter, name| format!("{letter} · {name}"),
    as_described: |letter| format!("{letter} · as described"),
    beside: "Beside it, what the description foresees",
    beside_detail: "Of the same cooker from its parts and the tables, before anything was measured of it by these runs. The bands are as wide as descriptions are wrong.",
    beside_none: "Open a run and let it be worked out once more: then the description’s figures are kept with it.",
    measured: "What was measured",
    figures: "Figures under the same conditions",
    figure: "Figure",
    banded: |value, low, high, unit| format!("{value} ({low} to {high})\u{A0}{unit}"),
    plain: |value, unit| format!("{value}\u{A0}{unit}"),
    above_all: |value| format!("{value}: can’t be, look the run over"),
    not_told: "not told",
    no_value: "never",
    not_fitted: "not worked out",
    air_in_file: "read, in the file",
    together: |names| {
        format!("Worked out together, and so with the same figures of the cooker: {names}.")
    },
    fit_first: "Open a run and have it worked out, so that its figures stand here.",
    parameter: |parameter| match parameter {
        Parameter::Loss => "Loss through the jacket",
        Parameter::JacketCapacity => "Heat the jacket holds",
        Parameter::StoreCapacity => "Heat the store holds, of what is described",
        Parameter::MeltingPoint => "Melting point",
        Parameter::MeltingRange => "Width of melting",
        Parameter::Heater => "Heat that arrives, of what is measured",
        Parameter::Contact => "Contact with the pot",
        Parameter::PotLoss => "Loss of the pot, of what is described",
    },
    told_at: "Loss and contact are told for a store at",
    told_halfway: |loss| format!("{loss}, the store halfway between the boil and the cut-out"),
    worth: "Worth of the fit",
    worth_of: |worth| match worth {
        Worth::None => "none",
        Worth::Little => "little",
        Worth::Rough => "rough",
        Worth::Good => "good",
    },
    scatter: "A reading is off by",
    named: FigureNames {
        litres: Named {
            name: "Litres boiled per charge",
            means: "Litres that a full store brings to the boil one after another, each put in as the last comes out. Whole ones within 4 hours each.",
        },
        first_litre: Named {
            name: "First-litre time",
            means: "From the first litre’s going into a full store to its boil.",
        },
        power_50: Named {
            name: "Power at 50 K below the boil",
            means: "Heat that the first litre and its pot gain by the second as they pass 50 K below the boil.",
        },
        hold: Named {
            name: "Hold time to the boil line",
            means: "From a full store to one that holds no more heat than at the boil, no pot in it.",
        },
        overnight: Named {
            name: "Overnight loss",
            means: "Share of a full store’s heat above the air that is lost in 12 hours, no pot in it.",
        },
        sun_to_food: Named {
            name: "Share of the day’s sun that reaches the food",
            means: "Heat to boil the most water that boils within an hour of sunset on 20 March, the last of four days with an ordinary sky, over the panels’ rated power times that day’s hours of full sun.",
        },
        boil_time: Named {
            name: "Time to boil",
            means: "From the pot’s going in to the local boil: the last pot of the run, as it was.",
        },
        boil_corrected: Named {
            name: "Time to boil, corrected",
            means: "The same times 75 K over the water’s own rise (Water Boiling Test 4.2.3).",
        },
        efficiency: Named {
            name: "Efficiency of the boil",
            means: "Heat in the water and in what boiled away, over what store and heater gave meanwhile (Water Boiling Test 4.2.3).",
        },
        standard: Named {
            name: "Standardised cooking power",
            means: "At 50 K above the air and 700 W/m² (ASAE S580.1), only where all its conditions hold.",
        },
    },
    csv: "Save the results as a file",
    csv_saved: |name| format!("{name} was handed to the browser."),
    csv_failed: |reason| format!("The file could not be saved. The browser says: {reason}"),
    to_print: "A page to print",
    print: "Print, or keep as PDF",
    print_hint: "The browser’s own window follows: a printer, or a file in the format PDF.",
    print_failed: "This browser can’t print a page.",
    builds: "Builds and place",
    build: |name, made_of| format!("{name}: {made_of}."),
    parts: |jacket, seat, pot, cutout| {
        format!("Jacket: {jacket}. Seat: {seat}. Pot: {pot}. Cuts out at {cutout}.")
    },
    place: |height, boil| format!("{height} above the sea, where water boils at {boil}."),
    conditions: "Runs and their conditions",
    heads: ConditionHeads {
        run: "Run",
        began: "Began",
        took: "Took",
        air: "Air",
        heater: "Heater",
        water: "Water in the pots",
        readings: "Readings",
    },
    methods: "How it was measured, and how sure it is",
    method: &[
        "Each run is a table of temperatures and times. The figures of a cooker are those with which a network of store, jacket, seat, pot and air shows these readings, found by nonlinear least squares in which single wild readings count less (soft-L1).",
        "Behind each figure stands the band that holds 8 of 10 of what may be. It comes of the scatter of the readings, of how they hang together in time, and of the model’s own error. What the runs tell less than half of is called ‘not told’.",
        "The figures under the same conditions are worked out from what was measured, whatever the weather of the runs was: a full store is at its cut-out, its jacket halfway to the air, the air at 20 °C, the heater off; a litre is 1.000 kg of water of 20 °C in the household’s own pot, its lid on. What the runs did not tell stands as the cooker is described, and makes the bands as wide as descriptions are wrong.",
        "‘As described’ is what the parts and the tables foresee of the same cooker, before these runs measured anything of it; the time to boil is that of the run’s own pot, from the run’s own start.",
    ],
    definitions: "What the figures are",
};

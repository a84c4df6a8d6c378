//! Which functions belong to the rest.

use std::collections::{HashMap, HashSet};

use walrus::ir::{Value, Visitor, dfs_in_order};
use walrus::{
    ConstExpr, ElementItems, ElementKind, ExportItem, FunctionId, FunctionKind, Module, TableId,
};

use crate::SplitError;

/// The rooms whose functions belong to the rest, as paths of the code. A name that has in it what
/// stands behind a minus stays all the same.
pub struct Rooms<'a>(pub &'a [String]);

impl Rooms<'_> {
    /// Whether a function's name speaks of one of the rooms.
    fn named_in(&self, name: &str) -> bool {
        let name = plain(name);
        let (staying, rooms): (Vec<_>, Vec<_>) =
            (self.0.iter()).partition(|room| room.starts_with('-'));
        rooms.into_iter().any(|room| mentions(&name, room))
            && !(staying.into_iter()).any(|part| name.contains(part.trim_start_matches('-')))
    }
}

/// A name as in the code, without the numbers that tell crates of one name apart.
fn plain(name: &str) -> String {
    let mut plain = String::new();
    let mut rest = &*format!("{:#}", rustc_demangle::demangle(name));
    while let Some(start) = rest.find('[') {
        let (before, after) = rest.split_at(start);
        plain.push_str(before);
        let end = after.find(']').map_or(after.len(), |end| end + 1);
        let (inside, after) = after.split_at(end);
        let number = inside.trim_matches(['[', ']']);
        if number.len() < 8 || !number.bytes().all(|byte| byte.is_ascii_hexdigit()) {
            plain.push_str(inside);
        }
        rest = after;
    }
    plain + rest
}

/// Whether the path stands in the name, and not as the beginning or end of another.
fn mentions(name: &str, path: &str) -> bool {
    let is_word = |c: char| c.is_alphanumeric() || c == '_';
    name.match_indices(path).any(|(at, _)| {
        let before = name[..at].chars().next_back();
        let after = name[at + path.len()..].chars().next();
        !before.is_some_and(is_word) && !after.is_some_and(is_word)
    })
}

/// A place in a table that holds a function from the start.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Place {
    pub(crate) table: TableId,
    pub(crate) slot: u32,
    pub(crate) function: FunctionId,
}

/// The places of the table, one after the other.
pub(crate) fn places(module: &Module) -> Result<Vec<Place>, SplitError> {
    let mut places = Vec::new();
    for element in module.elements.iter() {
        let ElementKind::Active { table, offset } = &element.kind else {
            continue;
        };
        let ConstExpr::Value(Value::I32(offset)) = offset else {
            return Err(SplitError::Unknown("its table begins at no fixed place"));
        };
        let ElementItems::Functions(functions) = &element.items else {
            return Err(SplitError::Unknown("its table holds more than functions"));
        };
        let slots = offset.cast_unsigned()..;
        places.extend(slots.zip(functions).map(|(slot, function)| Place {
            table: *table,
            slot,
            function: *function,
        }));
    }
    Ok(places)
}

/// The functions that belong to the rest.
pub(crate) fn rest_of(module: &Module, rooms: &Rooms<'_>, places: &[Place]) -> HashSet<FunctionId> {
    let mut fixed: HashSet<FunctionId> = module.start.into_iter().collect();
    fixed.extend(
        module
            .exports
            .iter()
            .filter_map(|export| match export.item {
                ExportItem::Function(id) => Some(id),
                _ => None,
            }),
    );
    let calls = Calls::of(module);
    fixed.extend(&calls.referred);
    let in_table: HashSet<FunctionId> = places.iter().map(|place| place.function).collect();

    let mut rest = HashSet::new();
    let mut waiting: Vec<FunctionId> = (module.funcs.iter_local())
        .filter(|(id, _)| !fixed.contains(id))
        .map(|(id, _)| id)
        .filter(|id| {
            let name = module.funcs.get(*id).name.as_deref();
            name.is_some_and(|name| rooms.named_in(name))
        })
        .collect();
    while let Some(id) = waiting.pop() {
        if !rest.insert(id) {
            continue;
        }
        for called in calls.of_function.get(&id).into_iter().flatten() {
            let is_local = matches!(module.funcs.get(*called).kind, FunctionKind::Local(_));
            let only_from_rest = || {
                let callers = calls.to_function.get(called);
                callers.is_some_and(|callers| {
                    callers
                        .iter()
                        .all(|caller| caller == called || rest.contains(caller))
                })
            };
            if is_local
                && !fixed.contains(called)
                && !in_table.contains(called)
                && !rest.contains(called)
                && only_from_rest()
            {
                waiting.push(*called);
            }
        }
    }
    rest
}

/// Who calls whom by name.
#[derive(Default)]
struct Calls {
    of_function: HashMap<FunctionId, Vec<FunctionId>>,
    to_function: HashMap<FunctionId, Vec<FunctionId>>,
    /// Functions that are also taken as values.
    referred: HashSet<FunctionId>,
}

impl Calls {
    fn of(module: &Module) -> Self {
        let mut calls = Self::default();
        for (id, function) in module.funcs.iter_local() {
            let mut seen = Seen::default();
            dfs_in_order(&mut seen, function, function.entry_block());
            calls.referred.extend(seen.referred);
            for called in &seen.called {
                calls.to_function.entry(*called).or_default().push(id);
            }
            calls
                .of_function
                .insert(id, seen.called.into_iter().collect());
        }
        calls
    }
}

#[derive(Default)]
struct Seen {
    called: HashSet<FunctionId>,
    referred: HashSet<FunctionId>,
}

impl Visitor<'_> for Seen {
    fn visit_function_id(&mut self, id: &FunctionId) {
        self.called.insert(*id);
    }

    fn visit_ref_func(&mut self, instr: &walrus::ir::RefFunc) {
        self.referred.insert(instr.func);
    }
}

//! The two parts.

use std::collections::{HashMap, HashSet};

use id_arena::Id;
use walrus::ir::Value;
use walrus::{
    ConstExpr, DataKind, ElementItems, ElementKind, ExportId, ExportItem, FunctionId, FunctionKind,
    GlobalKind, ImportKind, ImportedFunction, Module, ModuleConfig, TableId,
};

use crate::SplitError;
use crate::choose::{Place, Rooms, places, rest_of};

/// What the first part asks JavaScript for: the doors to the rest.
pub(crate) const DOORS: &str = "rest";

/// What the rest is given: all that the first part lends.
pub(crate) const LENT: &str = "first";

/// Under this name the first part lends the table of functions.
pub(crate) const TABLE: &str = "r_table";

/// A program in two parts.
#[derive(Debug)]
pub struct Parts {
    /// What the first screens need.
    pub first: Vec<u8>,
    /// The rest.
    pub rest: Vec<u8>,
    /// How many functions the rest has.
    pub moved: usize,
}

/// Cuts a program in two.
///
/// # Errors
///
/// [`SplitError`], where the program is damaged or has what today's compiler never writes.
pub fn cut(program: &[u8], rooms: &Rooms<'_>) -> Result<Parts, SplitError> {
    let mut first = read(program)?;
    let mut rest = read(program)?;
    let places = places(&first)?;
    let moved = rest_of(&first, rooms, &places);
    // The two copies were read from the same bytes, so a thing has the same number in both.
    let moved: HashSet<usize> = moved.iter().map(|id| id.index()).collect();
    let doors: HashMap<usize, String> = (places.iter())
        .map(|place| (place.function.index(), place.slot.to_string()))
        .collect();
    leave_to_rest(&mut first, &moved, &doors);
    let table = leave_to_first(&mut rest, &moved, &doors, &places)?;
    lend(&mut first, &rest);
    if let Some(table) = by_number(first.tables.iter().map(|table| table.id())).get(&table) {
        first.exports.add(TABLE, *table);
    }
    walrus::passes::gc::run(&mut first);
    Ok(Parts {
        first: first.emit_wasm(),
        rest: rest.emit_wasm(),
        moved: moved.len(),
    })
}

fn read(program: &[u8]) -> Result<Module, SplitError> {
    ModuleConfig::new()
        .generate_producers_section(false)
        .parse(program)
        .map_err(|why| SplitError::Unreadable(why.to_string()))
}

/// The name of the door to a function: its place in the table, or one of its own.
fn door(id: FunctionId, doors: &HashMap<usize, String>) -> String {
    let number = id.index();
    (doors.get(&number).cloned()).unwrap_or_else(|| format!("f{number}"))
}

/// Makes the functions of the rest doors.
fn leave_to_rest(first: &mut Module, moved: &HashSet<usize>, doors: &HashMap<usize, String>) {
    let ids: Vec<FunctionId> = first.funcs.iter_local().map(|(id, _)| id).collect();
    for id in ids.into_iter().filter(|id| moved.contains(&id.index())) {
        import(first, id, DOORS, &door(id, doors));
    }
}

fn import(module: &mut Module, id: FunctionId, from: &str, name: &str) {
    let import = module.imports.add(from, name, id);
    let function = module.funcs.get_mut(id);
    let ty = function.ty();
    function.kind = FunctionKind::Import(ImportedFunction { import, ty });
}

/// Leaves in the rest only what was moved there; all else is lent by the first part. Gives the table
/// that its functions go into.
fn leave_to_first(
    rest: &mut Module,
    moved: &HashSet<usize>,
    doors: &HashMap<usize, String>,
    places: &[Place],
) -> Result<usize, SplitError> {
    if rest
        .data
        .iter()
        .any(|data| matches!(data.kind, DataKind::Passive))
    {
        return Err(SplitError::Unknown("it has data that it fetches itself"));
    }
    rest.start = None;
    let exports: Vec<ExportId> = rest.exports.iter().map(|export| export.id()).collect();
    for id in exports {
        rest.exports.delete(id);
    }
    let data: Vec<_> = rest.data.iter().map(|data| data.id()).collect();
    for id in data {
        rest.data.delete(id);
    }
    let elements: Vec<_> = rest.elements.iter().map(|element| element.id()).collect();
    for id in elements {
        rest.elements.delete(id);
    }
    lend_all(rest, moved);
    let table = hang(rest, moved, places)?;
    let ids: Vec<FunctionId> = rest.funcs.iter_local().map(|(id, _)| id).collect();
    for id in ids {
        if !doors.contains_key(&id.index()) {
            rest.exports.add(&door(id, doors), id);
        }
    }
    walrus::passes::gc::run(rest);
    Ok(table)
}

/// Makes an import of all that was not moved.
fn lend_all(rest: &mut Module, moved: &HashSet<usize>) {
    let ids: Vec<FunctionId> = rest.funcs.iter_local().map(|(id, _)| id).collect();
    for id in ids.into_iter().filter(|id| !moved.contains(&id.index())) {
        import(rest, id, LENT, "");
    }
    let tables: Vec<TableId> = rest.tables.iter().map(|table| table.id()).collect();
    for id in tables {
        let import = rest.imports.add(LENT, "", id);
        let table = rest.tables.get_mut(id);
        table.import = Some(import);
        table.elem_segments.clear();
    }
    let memories: Vec<_> = rest.memories.iter().map(|memory| memory.id()).collect();
    for id in memories {
        let import = rest.imports.add(LENT, "", id);
        let memory = rest.memories.get_mut(id);
        memory.import = Some(import);
        memory.data_segments.clear();
    }
    let globals: Vec<_> = rest.globals.iter().map(|global| global.id()).collect();
    for id in globals {
        let import = rest.imports.add(LENT, "", id);
        rest.globals.get_mut(id).kind = GlobalKind::Import(import);
    }
    // What the whole program imports, the first part hands on.
    for import in rest.imports.iter_mut() {
        import.module = LENT.to_owned();
        import.name = lent(&import.kind);
    }
}

/// The name under which a thing is lent.
fn lent(kind: &ImportKind) -> String {
    match kind {
        ImportKind::Function(id) => format!("r{}", id.index()),
        ImportKind::Table(id) => format!("r_t{}", id.index()),
        ImportKind::Memory(id) => format!("r_m{}", id.index()),
        ImportKind::Global(id) => format!("r_g{}", id.index()),
        ImportKind::Tag(id) => format!("r_e{}", id.index()),
    }
}

/// The things of a module by their numbers.
fn by_number<T>(ids: impl Iterator<Item = Id<T>>) -> HashMap<usize, Id<T>> {
    ids.map(|id| (id.index(), id)).collect()
}

/// Lends the rest all that it asks for.
fn lend(first: &mut Module, rest: &Module) {
    let functions = by_number(first.funcs.iter().map(|function| function.id()));
    let tables = by_number(first.tables.iter().map(|table| table.id()));
    let memories = by_number(first.memories.iter().map(|memory| memory.id()));
    let globals = by_number(first.globals.iter().map(|global| global.id()));
    for import in rest.imports.iter() {
        let item: Option<ExportItem> = match &import.kind {
            ImportKind::Function(id) => functions.get(&id.index()).map(|id| (*id).into()),
            ImportKind::Table(id) => tables.get(&id.index()).map(|id| (*id).into()),
            ImportKind::Memory(id) => memories.get(&id.index()).map(|id| (*id).into()),
            ImportKind::Global(id) => globals.get(&id.index()).map(|id| (*id).into()),
            ImportKind::Tag(_) => None,
        };
        if let Some(item) = item {
            first.exports.add(&import.name, item);
        }
    }
}

/// Puts the moved functions into their places of the table, once the rest is there. Gives the number
/// of the table.
fn hang(rest: &mut Module, moved: &HashSet<usize>, places: &[Place]) -> Result<usize, SplitError> {
    let functions = by_number(rest.funcs.iter_local().map(|(id, _)| id));
    let tables = by_number(rest.tables.iter().map(|table| table.id()));
    let mut hung_in = None;
    // Places side by side become one segment.
    let mut segments: Vec<(u32, Vec<FunctionId>)> = Vec::new();
    for Place {
        table,
        slot,
        function,
    } in places
    {
        let number = function.index();
        let Some(function) = functions.get(&number).filter(|_| moved.contains(&number)) else {
            continue;
        };
        hung_in = tables.get(&table.index());
        match segments.last_mut() {
            Some((start, run)) if *start as usize + run.len() == *slot as usize => {
                run.push(*function);
            }
            _ => segments.push((*slot, vec![*function])),
        }
    }
    let Some(table) = hung_in.copied() else {
        return Err(SplitError::Unknown("it calls nothing through a table"));
    };
    for (slot, functions) in segments {
        let kind = ElementKind::Active {
            table,
            offset: ConstExpr::Value(Value::I32(slot.cast_signed())),
        };
        let id = rest.elements.add(kind, ElementItems::Functions(functions));
        rest.tables.get_mut(table).elem_segments.insert(id);
    }
    Ok(table.index())
}

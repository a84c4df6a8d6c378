//! A program in two parts does what it does in one, run by an interpreter.

use wasmi::{Caller, Engine, Extern, Func, Instance, Linker, Module, Ref, Store, Val};

use crate::cut::{DOORS, LENT, TABLE};
use crate::{Rooms, cut, with_rest};

/// A program with two rooms that call each other by name and through a table, and share a memory, a
/// global and a function of JavaScript.
const PROGRAM: &str = r#"
(module
  (import "page" "add_ten" (func $add_ten (param i32) (result i32)))
  (memory (export "memory") 1)
  (global $depth (mut i32) (i32.const 100))
  (table $table 5 5 funcref)
  (type $count (func (param i32) (result i32)))
  (elem $table (i32.const 1) func $hall::wave $attic::wave $attic::climb)
  (data (i32.const 8) "\07")
  (func $hall::enter (export "enter") (param i32) (result i32)
    (i32.add (call $attic::climb (local.get 0)) (call_indirect (type $count) (local.get 0) (i32.const 2))))
  (func $hall::look (export "look") (result i32) (i32.load8_u (i32.const 8)))
  (func $hall::wave (param i32) (result i32) (i32.add (local.get 0) (global.get $depth)))
  (func $attic::climb (param i32) (result i32)
    (global.set $depth (i32.sub (global.get $depth) (i32.const 1)))
    (i32.store8 (i32.const 8) (i32.const 9))
    (call $ladder (call_indirect (type $count) (call $add_ten (local.get 0)) (i32.const 1))))
  (func $attic::wave (param i32) (result i32) (i32.mul (call $hall::wave (local.get 0)) (i32.const 3)))
  (func $ladder (param i32) (result i32) (i32.add (local.get 0) (i32.load8_u (i32.const 8)))))
"#;

struct Running {
    store: Store<Option<Instance>>,
    first: Instance,
}

impl Running {
    fn call(&mut self, name: &str, given: &[Val]) -> i32 {
        let function = self.first.get_func(&self.store, name).unwrap();
        let mut got = [Val::I32(0)];
        function.call(&mut self.store, given, &mut got).unwrap();
        got[0].i32().unwrap()
    }

    /// What `enter` gives twice, since it leaves things behind, and `look` before and after.
    fn told(&mut self) -> [i32; 4] {
        let before = self.call("look", &[]);
        let once = self.call("enter", &[Val::I32(5)]);
        let twice = self.call("enter", &[Val::I32(6)]);
        [before, once, twice, self.call("look", &[])]
    }
}

/// Starts a program; doors lead to the rest that the store holds.
fn started(program: &[u8]) -> Running {
    let engine = Engine::default();
    let module = Module::new(&engine, program).unwrap();
    let mut store = Store::new(&engine, None);
    let mut linker = Linker::new(&engine);
    linker
        .func_wrap("page", "add_ten", |number: i32| number + 10)
        .unwrap();
    for import in module.imports().filter(|import| import.module() == DOORS) {
        let ty = import.ty().func().unwrap().clone();
        let name = import.name().to_owned();
        let door = Func::new(
            &mut store,
            ty,
            move |mut caller: Caller<'_, Option<Instance>>, given, got| {
                let rest = caller.data().unwrap();
                let behind = rest.get_func(&caller, &name).unwrap_or_else(|| {
                    let table = caller.get_export(TABLE).and_then(Extern::into_table);
                    let slot = table.unwrap().get(&caller, name.parse().unwrap()).unwrap();
                    let Ref::Val(function) = slot.funcref().unwrap() else {
                        panic!("nothing stands in the table at {name}")
                    };
                    *function
                });
                behind.call(&mut caller, given, got)
            },
        );
        linker.define(DOORS, import.name(), door).unwrap();
    }
    let first = linker.instantiate_and_start(&mut store, &module).unwrap();
    Running { store, first }
}

fn hang(running: &mut Running, rest: &[u8]) {
    let module = Module::new(running.store.engine(), rest).unwrap();
    let mut linker = Linker::new(running.store.engine());
    for import in module.imports() {
        assert_eq!(import.module(), LENT);
        let lent = running.first.get_export(&running.store, import.name());
        linker.define(LENT, import.name(), lent.unwrap()).unwrap();
    }
    let rest = linker.instantiate_and_start(&mut running.store, &module);
    *running.store.data_mut() = Some(rest.unwrap());
}

#[test]
fn two_parts_do_what_the_whole_does() {
    let program = wat::parse_str(PROGRAM).unwrap();
    let rooms = ["attic".to_owned()];
    let parts = cut(&program, &Rooms(&rooms)).unwrap();
    // Besides what stands in the room, what only the room calls.
    assert_eq!(parts.moved, 3);
    let mut running = started(&parts.first);
    assert_eq!(running.call("look", &[]), 7);
    hang(&mut running, &parts.rest);
    assert_eq!(running.told(), started(&program).told());
}

#[test]
fn what_is_called_from_outside_stays() {
    let program = wat::parse_str(PROGRAM).unwrap();
    let rooms = ["hall".to_owned()];
    let parts = cut(&program, &Rooms(&rooms)).unwrap();
    assert_eq!(parts.moved, 1);
    let mut running = started(&parts.first);
    hang(&mut running, &parts.rest);
    assert_eq!(running.told(), started(&program).told());
}

#[test]
fn damaged_programs_are_refused() {
    let rooms = ["attic".to_owned()];
    let why = cut(b"not a program", &Rooms(&rooms)).unwrap_err();
    assert!(why.to_string().contains("can't be read"), "{why}");
}

#[test]
fn the_glue_is_told_of_the_rest() {
    let glue = "import0 = {};\n return { \"./app_bg.js\": import0, };\n\
                function sync() { return __wbg_finalize_init(instance, module); }\n\
                async function init() { return __wbg_finalize_init(instance, module); }\n";
    let told = with_rest(glue, "app_rest.wasm").unwrap();
    assert!(told.contains("return { \"rest\": doors, \"./app_bg.js\": import0, };"));
    assert!(told.contains("sync() { return __wbg_finalize_init"));
    assert!(told.contains("await withRest(); return __wbg_finalize_init"));
    assert!(told.contains("new URL(\"app_rest.wasm\", import.meta.url)"));
    assert!(with_rest("something else", "app_rest.wasm").is_none());
}

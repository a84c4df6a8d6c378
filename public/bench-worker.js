// Loads the program of the bench, which runs beside the page, and tells the page when it can't be.

const failed = (error) => postMessage(["failed", String(error)]);

try {
  importScripts("bench.js");
  wasm_bindgen({ module_or_path: "bench_bg.wasm" }).catch(failed);
} catch (error) {
  failed(error);
}

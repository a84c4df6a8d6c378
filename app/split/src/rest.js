
// The rest of the program comes while the person looks at the first screen.
const restAddress = new URL("REST_FILE", import.meta.url);
let rest, restModule;

// A device that has been here has it, or needs it at once.
function wasHere() {
    try {
        return navigator.serviceWorker?.controller || localStorage.length > 0;
    } catch {
        return true;
    }
}

async function downloadRest() {
    const answer = await fetch(restAddress);
    if (!answer.ok) { throw new Error(`${restAddress}: ${answer.status}`); }
    // What a browser compiles as it comes, it keeps compiled for the next visit, made fast where it ran
    // often; a host that does not say what it is has it compiled anew.
    return answer.headers.get("Content-Type") === "application/wasm"
        ? WebAssembly.compileStreaming(answer)
        : WebAssembly.compile(await answer.arrayBuffer());
}

// The app calls this once its first screen stands, and again where it failed.
globalThis.fetchRest = async () => {
    try {
        restModule ??= downloadRest();
        hang(await WebAssembly.instantiate(await restModule, { first: wasm }));
    } catch (why) {
        restModule = undefined;
        throw why;
    }
};

function hang(instance) {
    rest ??= instance.exports;
    delete globalThis.fetchRest;
}

const restIsAwaited = wasHere();
if (restIsAwaited) { (restModule = downloadRest()).catch(() => {}); }

async function withRest() {
    // Where it is not to be had, the app says so.
    if (restIsAwaited) { await globalThis.fetchRest().catch(() => {}); }
}

// A door was opened before its time: the page waits.
function waitForRest() {
    const request = new XMLHttpRequest();
    request.open("GET", restAddress, false);
    request.overrideMimeType("text/plain; charset=x-user-defined");
    request.send();
    const bytes = Uint8Array.from(request.responseText, (letter) => letter.charCodeAt(0));
    hang(new WebAssembly.Instance(new WebAssembly.Module(bytes), { first: wasm }));
}

// A door has the name of the function behind it, or its place in the table.
const doors = new Proxy({}, {
    get: (_, name) => (...given) => {
        if (!rest) { waitForRest(); }
        return (rest[name] ?? wasm.TABLE.get(name))(...given);
    },
});

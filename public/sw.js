// Keeps the whole app on the device, so that it opens without a server.
//
// A first visit downloads every file of the site in the list below; from then on the worker answers
// from its store alone. A new version of the site changes this file, so the browser notices, and
// the new worker downloads what changed and waits: it takes over when the page asks for it, or when
// the last page of the old version is closed. No request goes to another host than the app's own.

// files: begin (the build writes the list: address below this folder, SHA-256)
const FILES = [];
// files: end

const PREFIX = `duskpot ${self.registration.scope} `;

// What a file is stored under. With the hash in it, a stored file can't be mistaken for another
// version of itself.
const keyOf = (address, hash) => new URL(`${address}?sha256=${hash}`, self.registration.scope).href;

const STORED = new Map(
  FILES.map(([address, hash]) => [
    new URL(address, self.registration.scope).href,
    keyOf(address, hash),
  ]),
);
const PAGE = new URL("./", self.registration.scope).href;

async function sha256(bytes) {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

// One store a version: it is filled before the version counts, and dropped as a whole.
async function storeName() {
  const list = new TextEncoder().encode(JSON.stringify(FILES));
  return PREFIX + (await sha256(list)).slice(0, 16);
}

async function download(address, hash) {
  const url = new URL(address, self.registration.scope);
  // Asks the server even where it told the browser to keep a file for long; one that is unchanged
  // is not sent again.
  const response = await fetch(url, { cache: "no-cache" });
  const bytes = await response.arrayBuffer();
  // The hash also tells of a page of the host in place of the file, and of a site that is being
  // replaced at this moment.
  if (!response.ok || (await sha256(bytes)) !== hash) {
    throw new Error(`${url.href} is not the file of this version`);
  }
  // A new response, as one that came by way of a redirect may not answer for a page.
  return new Response(bytes, {
    headers: { "Content-Type": response.headers.get("Content-Type") ?? "" },
  });
}

async function fill() {
  const name = await storeName();
  const store = await caches.open(name);
  await Promise.all(
    FILES.map(async ([address, hash]) => {
      const key = keyOf(address, hash);
      // What an older version holds unchanged costs no download.
      const known = await caches.match(key);
      await store.put(key, known ?? (await download(address, hash)));
    }),
  );
}

async function dropOthers() {
  const name = await storeName();
  for (const other of await caches.keys()) {
    if (other.startsWith(PREFIX) && other !== name) {
      await caches.delete(other);
    }
  }
  // The page of a first visit was opened before there was a worker.
  await self.clients.claim();
}

async function respond(request, key) {
  const store = await caches.open(await storeName());
  const stored = await store.match(key);
  // A browser may have cleared the store; then the app is as good as its connection.
  return stored ?? fetch(request);
}

self.addEventListener("install", (event) => event.waitUntil(fill()));

self.addEventListener("activate", (event) => event.waitUntil(dropOthers()));

self.addEventListener("message", (event) => {
  if (event.data === "take over") {
    event.waitUntil(self.skipWaiting());
  }
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) {
    return;
  }
  url.hash = "";
  url.search = "";
  // Every page of the app is the one page: which screen it shows is behind the # in its address.
  const key = STORED.get(request.mode === "navigate" ? PAGE : url.href);
  if (key !== undefined) {
    event.respondWith(respond(request, key));
  }
});

// A notice that it is time to read was tapped: the app comes to the front, or opens.
async function show() {
  const pages = await self.clients.matchAll({ type: "window" });
  await (pages.length > 0 ? pages[0].focus() : self.clients.openWindow("./#/bench"));
}

self.addEventListener("notificationclick", (event) => {
  event.notification.close();
  event.waitUntil(show());
});

// Keeps the stopwatch in the browser, and nothing else: what the program serves comes first, what was kept where it does not answer.
const KEPT = "stopwatch";
const FILES = ["/stopwatch", "/stopwatch.js", "/stopwatch.css", "/taps.js", "/page.css", "/dom.js", "/api.js", "/jobs.js", "/shown.js", "/favicon.svg", "/font/regular.woff2", "/font/bold.woff2"];

addEventListener("install", (event) => event.waitUntil(caches.open(KEPT).then((kept) => kept.addAll(FILES)).then(() => skipWaiting())));
addEventListener("activate", (event) => event.waitUntil(clients.claim()));

addEventListener("fetch", (event) => {
  const { pathname } = new URL(event.request.url);
  if (event.request.method !== "GET" || !FILES.includes(pathname)) return;
  event.respondWith(fetch(event.request).then(async (answer) => {
    if (answer.ok) await (await caches.open(KEPT)).put(pathname, answer.clone());
    return answer.ok ? answer : (await caches.match(pathname)) ?? answer;
  }).catch(() => caches.match(pathname)));
});

// Keeps each bench page that was opened, with what it shows itself with, and answers with it when there is no network. It
// keeps nothing else, and an answer of the server always comes first.
"use strict";
const shelf = "fourpin-bench-1";
const parts = ["/own/bench.css", "/own/bench.js", "/own/mark.svg"];
const ours = (url) => url.origin === location.origin && (parts.includes(url.pathname) || /^\/jobs\/[^/]+\/bench$/.test(url.pathname));

// The page that brought this here was fetched before it, and is fetched once more to be kept.
addEventListener("install", (e) => {
  e.waitUntil(
    (async () => {
      const box = await caches.open(shelf);
      await box.addAll(parts);
      const open = await clients.matchAll({ includeUncontrolled: true, type: "window" });
      await Promise.all(open.map((c) => new URL(c.url)).filter(ours).map((u) => box.add(u.pathname)));
      await skipWaiting();
    })(),
  );
});
addEventListener("activate", (e) => e.waitUntil(clients.claim()));

addEventListener("fetch", (e) => {
  const url = new URL(e.request.url);
  if (e.request.method !== "GET" || !ours(url)) return;
  e.respondWith(
    (async () => {
      const box = await caches.open(shelf);
      try {
        const fresh = await fetch(e.request);
        if (fresh.ok && !fresh.redirected) await box.put(url.pathname, fresh.clone());
        return fresh;
      } catch (away) {
        return (await box.match(url.pathname)) || Response.error();
      }
    })(),
  );
});

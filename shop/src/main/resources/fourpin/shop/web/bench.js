// The bench: one step at a time. Ticks are kept on the device first and sent when there is a network; the server takes each
// as often as it comes (docs/bench-page.md).
"use strict";
(() => {
  const job = document.body.dataset.job;
  const plan = document.body.dataset.plan;
  const shelf = "fourpin-bench:" + job + ":" + plan;
  const steps = [...document.querySelectorAll(".step")];
  const at = (id) => document.getElementById(id);
  const again = 20000;

  // said: when, by this device's clock, never twice the same and never back; unsent: the server does not know it yet.
  let kept = { last: 0, now: 0, ticks: {} };
  try {
    kept = { ...kept, ...JSON.parse(localStorage.getItem(shelf) || "{}") };
  } catch (e) {
    // A device that keeps nothing still shows the steps.
  }
  const keep = () => {
    try {
      localStorage.setItem(shelf, JSON.stringify(kept));
    } catch (e) {
      say("This device keeps no ticks once the page is closed.");
    }
  };
  const tick = (step) => kept.ticks[step] || { state: "open", counted: 0, by: "" };
  const change = (step, more) => {
    kept.last = Math.max(kept.last + 1, Date.now());
    kept.ticks[step] = { ...tick(step), ...more, said: kept.last, unsent: true, by: "" };
    keep();
    show();
    send();
  };

  let shown = Math.min(Math.max(kept.now, 0), steps.length - 1);
  // What stands behind the # of a printed code: "step-9-14.20:0123abcd" or "part-bookcase.p2:0123abcd". The code of several
  // steps, or of a part, opens the first that is not done. After the colon begins the digest of the steps that were printed.
  const among = (numbers) => {
    const ranges = numbers.split(".").map((range) => range.split("-").map(Number));
    return (s) => ranges.some(([from, to = from]) => Number(s.dataset.step) >= from && Number(s.dataset.step) <= to);
  };
  const called = (what) => {
    const numbers = /^step-(\d[\d.-]*)$/.exec(what);
    return numbers ? among(numbers[1]) : (s) => s.dataset.parts.split(" ").some((p) => "part-" + p === what);
  };
  const fromAddress = () => {
    let hash = location.hash.slice(1);
    try {
      hash = decodeURIComponent(hash);
    } catch (e) {
      // Somebody else's address; it leads to no part.
    }
    const [what, print = ""] = hash.split(":");
    const these = called(what);
    const open = steps.findIndex((s) => these(s) && tick(s.dataset.step).state !== "done");
    const found = steps.findIndex(these);
    if (found >= 0) shown = open >= 0 ? open : found;
    if (print) at("printed").textContent = plan.startsWith(print) ? "" : at("printed").dataset.words;
  };
  const key = () => steps[shown].dataset.step;

  const say = (words) => {
    at("net").textContent = words;
    at("net").className = words ? "away" : "";
  };

  function show() {
    const done = steps.filter((s) => tick(s.dataset.step).state === "done").length;
    at("done").textContent = done + " of " + steps.length + " done";
    steps.forEach((s, i) => {
      const t = tick(s.dataset.step);
      s.classList.toggle("now", i === shown);
      const count = s.querySelector(".count");
      if (count) count.textContent = t.counted;
      s.querySelector(".by").textContent = t.state === "done" ? "Done" + (t.by ? ", says " + t.by : "") : "";
    });
    const t = tick(key());
    at("tick").setAttribute("aria-pressed", String(t.state === "done"));
    at("tick").textContent = t.state === "done" ? "Not done" : "Done";
    at("back").disabled = shown === 0;
    at("on").disabled = shown === steps.length - 1;
  }

  function go(to) {
    shown = Math.min(Math.max(to, 0), steps.length - 1);
    kept.now = shown;
    keep();
    history.replaceState(null, "", "#" + steps[shown].id);
    show();
    scrollTo(0, 0);
    steps[shown].focus({ preventScroll: true });
  }

  let sending = false;
  async function send() {
    if (sending) return;
    sending = true;
    try {
      const asked = await fetch(job + "/ticks?plan=" + plan, { credentials: "same-origin", redirect: "error" });
      if (!asked.ok) throw new Error(asked.status);
      let answer = await asked.json();
      const out = Object.entries(kept.ticks).filter(([, t]) => t.unsent);
      if (out.length) {
        const body = {
          plan,
          sent: Date.now(),
          ticks: out.map(([step, t]) => ({ step, state: t.state, counted: t.counted, said: t.said })),
        };
        const taken = await fetch(job + "/ticks", {
          method: "POST",
          credentials: "same-origin",
          redirect: "error",
          headers: { "Content-Type": "application/json", "Fourpin-Token": answer.token },
          body: JSON.stringify(body),
        });
        if (!taken.ok) throw new Error(taken.status);
        answer = await taken.json();
        out.forEach(([step, t]) => {
          if (kept.ticks[step].said === t.said) kept.ticks[step].unsent = false;
        });
      }
      answer.ticks.forEach((t) => {
        if (!tick(t.step).unsent) {
          kept.ticks[t.step] = { ...tick(t.step), state: t.state, counted: t.counted, by: t.device, unsent: false };
        }
      });
      keep();
      say("");
      if (answer.newest !== plan) at("printed").textContent = at("printed").dataset.changed;
      show();
    } catch (e) {
      const waiting = Object.values(kept.ticks).filter((t) => t.unsent).length;
      say(waiting ? "No network: " + waiting + " kept here until there is" : "No network");
    } finally {
      sending = false;
    }
    if (Object.values(kept.ticks).some((t) => t.unsent)) setTimeout(send, at("net").className ? again : 0);
  }

  // Browsers keep the screen on for pages of this machine and over HTTPS only; elsewhere it is said.
  async function stayAwake() {
    if (document.visibilityState !== "visible") return;
    try {
      await navigator.wakeLock.request("screen");
      at("sleeps").hidden = true;
    } catch (e) {
      at("sleeps").hidden = false;
    }
  }

  at("back").addEventListener("click", () => go(shown - 1));
  at("on").addEventListener("click", () => go(shown + 1));
  at("tick").addEventListener("click", () => {
    const done = tick(key()).state === "done";
    change(key(), { state: done ? "open" : "done" });
    if (!done && shown < steps.length - 1) go(shown + 1);
  });
  steps.forEach((s) => {
    const all = Number(s.querySelector(".counter")?.dataset.holes);
    const count = (by) => change(s.dataset.step, { counted: Math.min(all, Math.max(0, tick(s.dataset.step).counted + by)) });
    s.querySelector(".more")?.addEventListener("click", () => count(1));
    s.querySelector(".fewer")?.addEventListener("click", () => count(-1));
  });
  addEventListener("keydown", (e) => {
    if (e.ctrlKey || e.metaKey || e.altKey) return;
    if (e.key === "ArrowLeft") go(shown - 1);
    if (e.key === "ArrowRight") go(shown + 1);
  });
  addEventListener("hashchange", () => {
    fromAddress();
    show();
  });
  addEventListener("online", send);
  document.addEventListener("visibilitychange", () => {
    stayAwake();
    if (document.visibilityState === "visible") send();
  });
  // Without it, as when the network goes just now, the page is good for as long as it is not closed.
  if ("serviceWorker" in navigator) navigator.serviceWorker.register("/own/bench-worker.js", { scope: "/jobs/" }).catch(() => {});

  document.documentElement.classList.add("one");
  fromAddress();
  show();
  send();
  stayAwake();
})();

// The bench: one step at a time. Ticks are kept on the device first and sent when there is a network; the server takes each
// as often as it comes (docs/bench-page.md).
"use strict";
(() => {
  const { job, plan } = document.body.dataset;
  const OURS = "fourpin-bench:";
  const shelf = OURS + job + ":" + plan;
  const steps = [...document.querySelectorAll(".step")];
  const at = (id) => document.getElementById(id);
  const AGAIN = 20000;
  const WAKE_AGAIN = 1000;
  const A_LINE = 90; // signs of a step's words that tell it apart
  // Readers of screens say anew whatever is written anew.
  const wordsOf = (s) => s.querySelector("p.words").textContent.slice(0, A_LINE); // words of drawings have the same class
  const text = (where, words) => {
    if (where.textContent !== words) where.textContent = words;
  };

  // What the device keeps

  // said: when, by this device's clock, never twice the same and never back; unsent: the server does not know it yet; like:
  // what the step showed, and words: its first, for when the job has other steps by then.
  const empty = () => ({ last: 0, now: 0, ticks: {} });
  const read = (name) => {
    try {
      return { ...empty(), ...JSON.parse(localStorage.getItem(name) || "{}") };
    } catch (e) {
      return empty(); // A device that keeps nothing still shows the steps.
    }
  };
  const write = (name, all) => {
    try {
      if (all) localStorage.setItem(name, JSON.stringify(all));
      else localStorage.removeItem(name);
    } catch (e) {
      say("This device keeps no ticks once the page is closed.");
    }
  };
  const names = () => {
    try {
      return Object.keys(localStorage).filter((name) => name.startsWith(OURS));
    } catch (e) {
      return [];
    }
  };
  const unsent = (all) => Object.entries(all.ticks).filter(([, t]) => t.unsent);
  const waiting = () => names().filter((name) => name !== shelf).reduce((sum, name) => sum + unsent(read(name)).length, unsent(kept).length);

  const kept = { ...read(shelf), settled: false };
  // Another tab of the same steps keeps ticks as well: the later word on each stays.
  const join = () => {
    const other = read(shelf);
    Object.entries(other.ticks).forEach(([step, t]) => {
      if ((t.said || 0) > (tick(step).said || 0)) kept.ticks[step] = t;
    });
    kept.last = Math.max(kept.last, other.last);
  };
  const keep = () => {
    join();
    write(shelf, kept);
  };
  const tick = (step) => kept.ticks[step] || { state: "open", counted: 0, by: "" };
  const put = (s, more) => {
    join();
    kept.last = Math.max(kept.last + 1, Date.now());
    const { step, like } = s.dataset;
    const words = wordsOf(s);
    kept.ticks[step] = { ...tick(step), ...more, like, words, said: kept.last, unsent: true, by: "" };
  };
  const change = (s, more) => {
    put(s, more);
    keep();
    show();
    send();
  };

  // What is shown

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

  const say = (words, way) => {
    const net = at("net");
    if (net.textContent === words + (way ? way.words : "")) return;
    net.textContent = words;
    net.className = words ? "away" : "";
    if (!way) return;
    const link = document.createElement("a");
    link.href = way.to;
    link.textContent = way.words;
    net.append(link);
  };

  function show() {
    const done = steps.filter((s) => tick(s.dataset.step).state === "done").length;
    text(at("done"), done + " of " + steps.length + " done");
    steps.forEach((s, i) => {
      const t = tick(s.dataset.step);
      s.classList.toggle("now", i === shown);
      const count = s.querySelector(".count");
      if (count) text(count, String(t.counted));
      text(s.querySelector(".by"), t.state === "done" ? "Done" + (t.by ? ", says " + t.by : "") : "");
    });
    const isDone = tick(steps[shown].dataset.step).state === "done";
    at("tick").classList.toggle("done", isDone);
    text(at("tick"), isDone ? "Not done" : "Done");
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

  // Ticks of the steps that the job had before. They are sent as what they are; whether one still holds only the maker can say,
  // so that those of steps which show the very same now are offered, and the others are told.

  const former = () => names().filter((name) => name !== shelf && name.startsWith(OURS + job + ":"));
  const begun = (t) => t.state === "done" || t.counted > 0;
  function before() {
    const free = steps.filter((s) => !begun(tick(s.dataset.step)));
    const same = [];
    const other = [];
    const told = new Set();
    former()
      .map(read)
      .filter((all) => !all.settled)
      .sort((a, b) => b.last - a.last)
      .flatMap((all) => Object.entries(all.ticks))
      .filter(([, t]) => begun(t))
      .forEach(([step, t]) => {
        // What was said of a step since, as that it is not done after all, holds.
        const here = free.findIndex((s) => t.like && s.dataset.like === t.like && (tick(s.dataset.step).said || 0) <= (t.said || 0));
        const known = t.like || step;
        if (here >= 0) same.push({ s: free.splice(here, 1)[0], t });
        else if (!told.has(known) && !steps.some((s) => s.dataset.like === t.like)) other.push({ step, t });
        told.add(known);
      });
    return { same, other };
  }
  const how = (t) => (t.state === "done" ? "done" : t.counted + (t.counted === 1 ? " hole bored" : " holes bored"));
  const list = (id, lines) => {
    at(id).replaceChildren(
      ...lines.map((words) => {
        const line = document.createElement("li");
        line.textContent = words;
        return line;
      }),
    );
    at(id + "-part").hidden = lines.length === 0;
  };
  function tellBefore() {
    const { same, other } = before();
    at("before").hidden = same.length + other.length === 0;
    if (at("before").hidden) return former().forEach(settle);
    list("same", same.map(({ s, t }) => "Step " + s.dataset.step + ", " + how(t) + ": " + wordsOf(s)));
    list("other", other.map(({ step, t }) => "It was step " + step + ", " + how(t) + (t.words ? ": " + t.words : "")));
    at("take").hidden = same.length === 0;
    at("leave").textContent = same.length ? "Leave them open" : "I have seen it";
  }
  // What the server has can go; it keeps it with the steps that it is of.
  const settle = (name) => {
    const all = read(name);
    write(name, unsent(all).length ? { ...all, settled: true } : null);
  };
  function settled() {
    former().forEach(settle);
    at("before").hidden = true;
    show();
    steps[shown].focus();
    send();
  }
  at("take").addEventListener("click", () => {
    before().same.forEach(({ s, t }) => put(s, { state: t.state, counted: t.counted }));
    keep();
    settled();
  });
  at("leave").addEventListener("click", settled);

  // What the server is told and tells

  const pairing = { words: "Pair this device again", to: "/pair?to=" + encodeURIComponent(job + "/bench") };
  const troubles = {
    away: (n) => [n ? "No network: " + n + " kept here until there is" : "No network"],
    unpaired: (n) => ["This device is not paired any more" + (n ? ": " + n + " kept here. " : ". "), pairing],
    gone: (n) => ["This job is no longer here" + (n ? ": " + n + " kept on this device. " : ". "), { words: "To the jobs", to: "/" }],
    refused: (n, words) => ["Fourpin does not take this" + (n ? ", " + n + " kept here" : "") + ": " + words + " ", { words: "Load the page anew", to: job + "/bench" }],
    failing: (n, words) => ["Fourpin answers with an error (" + words + ")" + (n ? ": " + n + " kept here until it does not" : "")],
  };
  class Trouble extends Error {
    constructor(kind, words) {
      super(words);
      this.kind = kind;
    }
  }
  const kindOf = (answer) => {
    if (answer.type === "opaqueredirect" || answer.status === 401) return "unpaired"; // led to where devices are paired
    if (answer.status === 404) return "gone";
    return answer.status >= 500 || answer.status === 429 ? "failing" : "refused";
  };
  const plain = (answer) => (answer.headers.get("Content-Type") || "").startsWith("text/plain");
  async function ask(address, more) {
    const answer = await fetch(address, { credentials: "same-origin", redirect: "manual", ...more }).catch(() => {
      throw new Trouble("away");
    });
    if (!answer.ok) throw new Trouble(kindOf(answer), plain(answer) ? (await answer.text()).trim() : String(answer.status));
    return answer.json().catch(() => {
      throw new Trouble("away"); // something else answers, as where a network wants one to sign in
    });
  }
  const post = (token, where, of, ticks) =>
    ask(where + "/ticks", {
      method: "POST",
      headers: { "Content-Type": "application/json", "Fourpin-Token": token },
      body: JSON.stringify({
        plan: of,
        sent: Date.now(),
        ticks: ticks.map(([step, t]) => ({ step, state: t.state, counted: t.counted, said: t.said })),
      }),
    });
  const known = (all, sent) =>
    sent.forEach(([step, t]) => {
      if (all.ticks[step] && all.ticks[step].said === t.said) all.ticks[step] = { ...all.ticks[step], unsent: false };
    });

  async function sendOwn() {
    const was = JSON.stringify(kept);
    let answer = await ask(job + "/ticks?plan=" + plan);
    const out = unsent(kept);
    if (out.length) {
      answer = await post(answer.token, job, plan, out);
      known(kept, out);
    }
    const ahead = Date.now() - answer.now; // of the server's clock
    answer.ticks.forEach((t) => {
      const s = steps.find((one) => one.dataset.step === t.step);
      const had = tick(t.step);
      if (!s || had.unsent) return;
      const same = had.state === t.state && had.counted === t.counted && had.by === t.device;
      const said = same && had.said ? had.said : t.at + ahead;
      kept.ticks[t.step] = { ...had, state: t.state, counted: t.counted, by: t.device, like: s.dataset.like, words: wordsOf(s), said, unsent: false };
    });
    if (!at("before").hidden) tellBefore();
    if (JSON.stringify(kept) !== was) keep();
    at("changed").hidden = answer.newest === plan;
    return answer.token;
  }
  // Of other steps and other jobs, as they were kept when the page was closed.
  async function sendOthers(token) {
    for (const name of names().filter((one) => one !== shelf)) {
      const [, where, of] = /^fourpin-bench:(.*):([^:]*)$/.exec(name) || [];
      const out = where ? unsent(read(name)) : [];
      if (!out.length) continue;
      try {
        await post(token, where, of, out);
      } catch (e) {
        if (e.kind !== "gone") throw e;
        continue; // That job is no longer here; its own page says so.
      }
      const now = read(name);
      known(now, out);
      write(name, now.settled && !unsent(now).length ? null : now);
    }
  }

  let sending = false;
  let next = 0;
  async function send() {
    if (sending) return;
    sending = true;
    clearTimeout(next);
    try {
      await sendOthers(await sendOwn());
      say("");
    } catch (e) {
      if (!e.kind) throw e;
      say(...troubles[e.kind](waiting(), e.message));
    } finally {
      sending = false;
      next = setTimeout(send, unsent(kept).length && !at("net").className ? 0 : AGAIN);
      show();
    }
  }

  // Browsers keep the screen on for pages of this machine and over HTTPS only, and let it go when the page is hidden or the
  // battery low; where it cannot be had it is said.
  let lock = null;
  async function stayAwake() {
    if (document.visibilityState !== "visible" || lock) return;
    try {
      const got = await navigator.wakeLock.request("screen");
      lock = got;
      got.addEventListener("release", () => {
        lock = null;
        if (document.visibilityState !== "visible") return;
        at("sleeps").hidden = false;
        setTimeout(stayAwake, WAKE_AGAIN);
      });
      at("sleeps").hidden = true;
    } catch (e) {
      at("sleeps").hidden = false;
    }
  }

  at("back").addEventListener("click", () => go(shown - 1));
  at("on").addEventListener("click", () => go(shown + 1));
  at("tick").addEventListener("click", () => {
    const done = tick(steps[shown].dataset.step).state === "done";
    change(steps[shown], { state: done ? "open" : "done" });
    stayAwake(); // some browsers let a touch have what they have refused
    if (!done && shown < steps.length - 1) go(shown + 1);
  });
  at("anew").addEventListener("click", () => location.reload());
  steps.forEach((s) => {
    const all = Number(s.querySelector(".counter")?.dataset.holes);
    const count = (by) => change(s, { counted: Math.min(all, Math.max(0, tick(s.dataset.step).counted + by)) });
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
  addEventListener("storage", (e) => {
    if (e.key !== shelf) return;
    join();
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
  tellBefore();
  show();
  send();
  stayAwake();
})();

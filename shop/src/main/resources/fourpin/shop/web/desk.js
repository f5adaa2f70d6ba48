// What the pages do beyond forms: send a field when it is left, look at workings, take hold of shelves.
"use strict";

const head = () => document.getElementById("head");
const say = (words) => {
  const notice = document.getElementById("notice");
  if (notice) notice.textContent = words;
};

// The shelf that is being moved and not yet sent; the drawing waits for it.
let held = null;

// Fields

let leaving = false;
document.addEventListener("change", (event) => {
  const form = event.target.closest("form.field");
  if (!form) return;
  leaving = true;
  form.requestSubmit();
  leaving = false;
  form.dataset.sent = event.target.value;
});

// Enter leaves a field and sends its form besides.
document.addEventListener("submit", (event) => {
  const form = event.target.closest("form.field");
  if (form && !leaving && form.dataset.sent === form.elements.value.value) {
    event.preventDefault();
    event.stopPropagation();
  }
}, true);

// A form that loads the page anew was made when the page was; what is seen has changed since.
document.addEventListener("submit", (event) => {
  const form = event.target.closest("form.bring");
  if (!form || !head()) return;
  form.elements.seen.value = head().dataset.seen;
  form.elements.token.value = head().dataset.token;
});

// A file that cannot be a job file is told of before it is sent.
document.addEventListener("change", (event) => {
  const most = Number(event.target.dataset?.most);
  if (!most) return;
  const file = event.target.files[0];
  event.target.setCustomValidity(file && file.size > most
    ? `${file.name} has ${(file.size / 1048576).toFixed(1)} MiB; a job file or shop file may have ${most / 1048576} MiB. Choose the file itself, not a packet or a backup.` : "");
  event.target.reportValidity();
});

document.addEventListener("htmx:configRequest", (event) => {
  if (!head() || event.detail.verb !== "post") return;
  event.detail.parameters.set("seen", head().dataset.seen);
  event.detail.parameters.set("token", head().dataset.token);
  event.detail.parameters.set("open", document.getElementById("fields").dataset.open);
  event.detail.parameters.set("work", workName());
});

// What takes long says how far it is, and can be stopped until it is kept.

const LONG = 1000;
const workName = () => [...crypto.getRandomValues(new Uint8Array(16))].map((b) => b.toString(16).padStart(2, "0")).join("");
const busy = document.getElementById("busy");
const busySays = document.getElementById("busy-says");
let awaited = null; // the newest request
let asking = 0;

async function sayHowFar() {
  const of = awaited;
  busy.hidden = false;
  if (!busySays.textContent) busySays.textContent = "Working it out.";
  const answer = await fetch(head().dataset.base + "/work?of=" + of.work, { credentials: "same-origin", redirect: "error" }).catch(() => null);
  if (of !== awaited || of.stopped) return;
  if (answer && answer.ok) busySays.textContent = await answer.text();
}

document.addEventListener("htmx:beforeSend", (event) => {
  const work = event.detail.requestConfig.parameters.work;
  if (!busy || !work) return;
  clearInterval(asking);
  awaited = { work, xhr: event.detail.xhr, stopped: false };
  asking = setInterval(sayHowFar, LONG);
});
document.addEventListener("htmx:afterRequest", (event) => {
  if (!awaited || awaited.xhr !== event.detail.xhr) return;
  clearInterval(asking);
  awaited = null;
  const hadFocus = busy.contains(document.activeElement);
  busy.hidden = true;
  busySays.textContent = "";
  if (hadFocus) {
    head().tabIndex = -1;
    head().focus({ preventScroll: true });
  }
});
busy?.querySelector("button").addEventListener("click", async () => {
  const { base, token } = head().dataset;
  const of = awaited;
  const answer = await fetch(base + "/stop", { method: "POST", credentials: "same-origin", redirect: "error", body: new URLSearchParams({ token, work: of.work }) }).catch(() => null);
  if (of !== awaited) return;
  of.stopped = Boolean(answer && answer.ok);
  busySays.textContent = of.stopped ? "Stopping after this lot." : "That cannot be stopped any more.";
});

// A field that somebody is typing in stays as it is when an answer comes: taken out of the page, it would be sent half typed.
document.addEventListener("htmx:oobBeforeSwap", (event) => {
  const input = document.activeElement;
  const typing = input && input.matches("form.field input") && ![input.defaultValue, input.form.dataset.sent].includes(input.value);
  if (held && event.detail.target.id === "board") event.detail.shouldSwap = false;
  if (typing && event.detail.target.contains(input)) event.detail.shouldSwap = false;
});

// What answers a form that the answer to another one has replaced meanwhile is for the page all the same; htmx would look for its parts in
// the form that is gone.
document.addEventListener("htmx:beforeSwap", (event) => {
  const { requestConfig, shouldSwap, xhr } = event.detail;
  if (requestConfig.elt.isConnected || !shouldSwap) return;
  event.detail.shouldSwap = false;
  htmx.swap(document.body, xhr.response, { swapStyle: "none", swapDelay: 0, settleDelay: 0 }, { eventInfo: event.detail });
});

// What goes wrong on the way. A server that was started anew takes no page of before until it shows a fresh token; that is fetched, and
// what was sent is sent once more: what it is based on is kept, so that nobody's change is overwritten by it.

const SILENT = "The server does not answer, so it is not sure that this was kept. What you typed stays here: send it again when Fourpin runs.";
const UNPAIRED = "This device is not paired any more; nothing was changed. What you typed stays here: pair the device in another tab, then send it again.";

// What comes to nothing is said as of any form.
const ask = (path, source, values) => htmx.ajax("POST", path, { source, values, target: "body", swap: "none" }).catch(() => {});

async function freshToken() {
  const answer = await fetch("/token", { credentials: "same-origin", redirect: "manual" }).catch(() => null);
  if (!answer) return { trouble: SILENT };
  if (answer.type === "opaqueredirect") return { trouble: UNPAIRED };
  return answer.ok ? { token: await answer.text() } : { trouble: "That was refused (" + answer.status + "); nothing was changed." };
}
const show = (token) => {
  document.querySelectorAll("input[name=token]").forEach((input) => { input.value = token; });
  if (head()) head().dataset.token = token;
};

// The same can be sent again, and shelves lie where they are kept.
function failed(element, words) {
  const form = element.closest && element.closest("form.field");
  if (form) delete form.dataset.sent;
  document.querySelectorAll(".handle[data-kept]").forEach((handle) => {
    lay(handle, Number(handle.dataset.kept));
    handle.dataset.sent = handle.dataset.kept;
  });
  held = null;
  say(words);
}
document.addEventListener("htmx:sendError", (event) => failed(event.target, SILENT));
document.addEventListener("htmx:responseError", async (event) => {
  const { xhr, requestConfig, elt } = event.detail;
  const plain = (xhr.getResponseHeader("Content-Type") || "").startsWith("text/plain") ? xhr.responseText : "";
  const words = xhr.status === 401 ? UNPAIRED : plain || "That was refused (" + xhr.status + "); nothing was changed.";
  if (xhr.status !== 403 || requestConfig.verb !== "post") return failed(elt, words);
  const values = Object.fromEntries(requestConfig.formData);
  const { token, trouble } = await freshToken();
  if (trouble || token === values.token) return failed(elt, trouble || words);
  show(token);
  return ask(requestConfig.path, elt, { ...values, token });
});
// Whoever is not paired is led to where devices are paired; that is no part of this page.
document.addEventListener("htmx:beforeSwap", (event) => {
  if (new URL(event.detail.xhr.responseURL).pathname !== "/pair") return;
  event.detail.shouldSwap = false;
  failed(event.detail.requestConfig.elt, UNPAIRED);
});

// Forms that lead to another page are sent when it is sure that there is somebody who takes them; who is not paired yet has no token.
const ready = new WeakSet();
document.addEventListener("submit", async (event) => {
  const form = event.target;
  if (form.method !== "post" || form.hasAttribute("hx-post") || form.matches("[action^='/pair']") || !form.elements.token || ready.delete(form)) return;
  event.preventDefault();
  if (form.dataset.asking) return;
  form.dataset.asking = "yes";
  const { token, trouble } = await freshToken();
  delete form.dataset.asking;
  form.querySelector(".unsent")?.remove();
  if (trouble) {
    const says = document.createElement("p");
    says.className = "wrong unsent";
    says.setAttribute("role", "alert");
    says.textContent = trouble;
    form.append(says);
    return;
  }
  show(token);
  ready.add(form);
  form.requestSubmit(event.submitter);
  // Several cases may be worked out before one holds up.
  if (form.matches("[action='/new']")) setTimeout(() => say("Working out a case that holds up."), LONG);
});

// Workings

document.addEventListener("htmx:afterSwap", (event) => {
  if (event.detail.target.id === "working") document.getElementById("look").showModal();
});

// Open tables and headings stay open or shut.
const shut = new Map();
document.addEventListener("toggle", (event) => {
  const title = event.target.matches("details") && event.target.querySelector("h2");
  if (title) shut.set(title.textContent, event.target.open);
}, true);
document.addEventListener("htmx:oobAfterSwap", () => {
  for (const details of document.querySelectorAll("details")) {
    const title = details.querySelector("h2");
    if (title && shut.has(title.textContent)) details.open = shut.get(title.textContent);
  }
});

// Shelves

const LATER = 600;
let waiting = 0;

const tops = (handle) => handle.dataset.tops.split(" ").map(Number);
const levelOf = (handle) => Number(handle.getAttribute("aria-valuenow"));
const lowest = (handle) => Number(handle.getAttribute("aria-valuemin"));
const highest = (handle) => Number(handle.getAttribute("aria-valuemax"));

const topOf = (handle) => Number(handle.querySelector(".grip").getAttribute("y"));
function lay(handle, level) {
  held = handle;
  const all = tops(handle);
  const at = Math.min(Math.max(level, lowest(handle)), highest(handle));
  handle.setAttribute("aria-valuenow", at);
  handle.setAttribute("aria-valuetext", handle.dataset.heights.split("|")[at - 1]);
  for (const rect of handle.querySelectorAll("rect")) rect.setAttribute("y", all[at - 1]);
  say("Shelf at " + handle.dataset.heights.split("|")[at - 1]);
}

function send(handle) {
  clearTimeout(waiting);
  held = null;
  const level = levelOf(handle);
  if (String(level) === handle.dataset.sent) return;
  handle.dataset.sent = level;
  handle.classList.remove("moving");
  const { base, case: of } = head().dataset;
  ask(base + "/move", head(), { case: of, bay: handle.dataset.bay, shelf: handle.dataset.shelf, level });
}

function putBack(handle) {
  handle.classList.remove("moving");
  lay(handle, Number(handle.dataset.sent));
  held = null;
}

function begin(handle) {
  if (handle.dataset.sent) return;
  handle.dataset.sent = handle.dataset.kept = levelOf(handle);
}

document.addEventListener("keydown", (event) => {
  const handle = event.target.closest && event.target.closest(".handle");
  if (!handle) return;
  const to = {
    ArrowUp: levelOf(handle) + 1, ArrowRight: levelOf(handle) + 1,
    ArrowDown: levelOf(handle) - 1, ArrowLeft: levelOf(handle) - 1,
    PageUp: levelOf(handle) + 5, PageDown: levelOf(handle) - 5, Home: lowest(handle), End: highest(handle),
  }[event.key];
  begin(handle);
  if (to !== undefined) {
    event.preventDefault();
    lay(handle, to);
    clearTimeout(waiting);
    waiting = setTimeout(() => send(handle), LATER);
  } else if (event.key === "Enter") {
    send(handle);
  } else if (event.key === "Escape") {
    clearTimeout(waiting);
    putBack(handle);
  }
});

// Where a pointer is, in the units of the picture that a handle lies in.
const heightOf = (event, handle) =>
  new DOMPoint(event.clientX, event.clientY).matrixTransform(handle.ownerSVGElement.getScreenCTM().inverse()).y;

// Shelves close to each other reach over each other: the one meant is the one whose middle is nearest.
function meant(event) {
  const under = event.target.closest && event.target.closest(".handle");
  if (!under) return null;
  const away = (handle) => {
    const grip = handle.querySelector(".grip").getBoundingClientRect();
    return Math.abs((grip.top + grip.bottom) / 2 - event.clientY);
  };
  const bay = document.querySelectorAll(`.handle[data-bay="${under.dataset.bay}"]`);
  return [...bay].reduce((best, handle) => (away(handle) < away(best) ? handle : best), under);
}

document.addEventListener("pointerdown", (event) => {
  const handle = meant(event);
  if (!handle || event.button !== 0) return;
  event.preventDefault();
  begin(handle);
  handle.focus();
  handle.setPointerCapture(event.pointerId);
  handle.dataset.grabbed = heightOf(event, handle) - topOf(handle);
  handle.classList.add("moving");
});

// A finger on a shelf moves it, and does not scroll: browsers do not mind the style touch-action within a picture.
document.addEventListener("touchstart", (event) => {
  if (event.target.closest(".handle")) event.preventDefault();
}, { passive: false });

document.addEventListener("pointermove", (event) => {
  const handle = event.target.closest && event.target.closest(".handle.moving");
  if (!handle) return;
  const top = heightOf(event, handle) - Number(handle.dataset.grabbed);
  const all = tops(handle);
  let nearest = 0;
  for (let i = 1; i < all.length; i++) {
    if (Math.abs(all[i] - top) < Math.abs(all[nearest] - top)) nearest = i;
  }
  if (nearest + 1 !== levelOf(handle)) lay(handle, nearest + 1);
});

document.addEventListener("pointerup", (event) => {
  const handle = event.target.closest && event.target.closest(".handle.moving");
  if (handle) {
    handle.classList.remove("moving");
    send(handle);
  }
});
document.addEventListener("pointercancel", (event) => {
  const handle = event.target.closest && event.target.closest(".handle.moving");
  if (handle) putBack(handle);
});

// Finding a field among many.
const showFinds = () => document.querySelectorAll(".find[hidden]").forEach((find) => { find.hidden = false; });
showFinds();
document.addEventListener("htmx:load", showFinds);
document.addEventListener("input", (event) => {
  const find = event.target.closest(".find");
  if (!find) return;
  const words = event.target.value.toLowerCase().split(/\s+/).filter(Boolean);
  let found = 0;
  for (const field of find.nextElementSibling.querySelectorAll(".field")) {
    const text = field.textContent.toLowerCase();
    field.hidden = !words.every((word) => text.includes(word));
    if (!field.hidden) found += 1;
  }
  find.querySelector(".hint").textContent = words.length ? found + " found" : "";
});

// A code on a sheet leads to a step: that part of the address no server is told, so that it comes along here when the device is paired first.
const pairing = document.querySelector("form[action='/pair']");
if (pairing) pairing.setAttribute("action", "/pair" + location.hash);

// Times in the zone and the words of who reads them.
for (const time of document.querySelectorAll("time[datetime]")) {
  const moment = new Date(time.dateTime);
  if (!Number.isNaN(moment.getTime())) time.textContent = moment.toLocaleString();
}

// Where the focus goes when parts of a page come anew: it stays where it was, under another name as well. Where what had it is
// gone, or does something else by now, as the press of a cure, what is asked in answer to it or the part itself gets it: a second
// Enter must do nothing.
"use strict";
(() => {
  const alike = (part, one) => {
    const isField = one.matches("input, select");
    const words = one.textContent.trim();
    return [...part.querySelectorAll(isField ? "input:not([type=hidden]), select" : one.tagName)].filter((e) => isField || e.textContent.trim() === words);
  };
  let focused = null;
  let marked = null; // what of a field is selected
  let sender = null;
  const PARTS = "section[id]";
  const GONE = ["cure", "leave", "earlier", "out"].map((does) => `form[action$='/${does}']`).join();
  document.addEventListener("htmx:beforeSwap", (event) => {
    const one = document.activeElement;
    const part = one && one.closest(PARTS);
    const left = one && one.closest(".asks > a") && one.closest(".asks").dataset.asks;
    marked = one && one.id && "selectionStart" in one ? { one, from: one.selectionStart, to: one.selectionEnd } : null;
    sender = event.detail.requestConfig.elt;
    focused = part && { one, part: part.id, index: alike(part, one).indexOf(one), gone: one.closest(GONE), left };
  });
  // Whoever leaves a thing as it is goes on where it was asked for.
  const askedBy = (part, press) => {
    const sent = [...part.querySelectorAll("input[name=cure]")].find((input) => input.value === press);
    const button = sent && sent.form.querySelector("button");
    const details = button && button.closest("details");
    if (details) details.open = true;
    return button;
  };
  const refocus = () => {
    const part = focused && !focused.one.isConnected && document.getElementById(focused.part);
    if (!part || (focused.one.id && document.getElementById(focused.one.id))) return;
    const { one, index, gone, left } = focused;
    const again = left ? askedBy(part, left) : gone ? null : alike(part, one)[index];
    const asked = part.querySelector("[data-asks]");
    focused = null;
    if (!again && asked) return asked.focus();
    again?.focus({ preventScroll: true });
    if (again && document.activeElement === again) return;
    part.tabIndex = -1;
    part.focus({ preventScroll: true });
  };
  // htmx selects nothing anew that began at the first letter, and who goes on typing must go on in place of what was selected.
  const mark = () => {
    const again = marked && !marked.one.isConnected && document.activeElement;
    if (again && again.id === marked.one.id) again.setSelectionRange(marked.from, marked.to);
    if (again) marked = null;
  };
  document.addEventListener("htmx:oobAfterSwap", refocus);
  document.addEventListener("htmx:afterSwap", () => {
    mark();
    refocus();
  });

  // What is filled in and not yet sent, or was refused, stays when its part comes anew because something else was sent.
  let kept = [];
  const isOpen = (one) => one.closest("details.begin[open]");
  const isWritten = (one) => one.matches("select") ? [...one.options].some((o) => o.selected !== o.defaultSelected) : one.value !== one.defaultValue;
  const isRefused = (one) => one.getAttribute("aria-invalid") === "true";
  const noteOf = (one) => document.getElementById(one.getAttribute("aria-describedby"));
  document.addEventListener("htmx:oobBeforeSwap", (event) => {
    if (!event.detail.shouldSwap) return;
    const all = event.detail.target.querySelectorAll("input[id]:not([type=search]), select[id]");
    kept = [...all].filter((one) => one.form !== sender && (isOpen(one) || isWritten(one) || isRefused(one)));
    kept = kept.map((one) => ({ one, open: isOpen(one), note: isRefused(one) && noteOf(one) }));
  });
  document.addEventListener("htmx:oobAfterSwap", () => {
    for (const { one, open, note } of kept) {
      const again = document.getElementById(one.id);
      if (!again || again === one) continue;
      if (open) again.closest("details").open = true;
      if (note) noteOf(again)?.replaceWith(note);
      if (note) again.setAttribute("aria-invalid", "true");
      if (note || isWritten(one)) again.value = one.value;
    }
    kept = [];
  });

  // What is moved up has the focus one place higher, so that another press moves the same on.
  document.addEventListener("htmx:afterRequest", (event) => {
    const form = event.detail.elt;
    const fields = document.getElementById("fields");
    if (!event.detail.successful || !fields?.contains(form) || !form.matches("form[action$='/earlier']")) return;
    const before = form.closest("fieldset").previousElementSibling?.querySelector(":scope > form[action$='/earlier'] button");
    if (!before) fields.tabIndex = -1;
    (before || fields).focus({ preventScroll: true });
  });
})();

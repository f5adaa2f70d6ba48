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
  const PARTS = "section[id], #shop";
  const GONE = ["cure", "leave", "earlier", "out"].map((does) => `form[action$='/${does}']`).join();
  document.addEventListener("htmx:beforeSwap", () => {
    const one = document.activeElement;
    const part = one && one.closest(PARTS);
    const left = one && one.closest(".asks > a") && one.closest(".asks").dataset.asks;
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
  document.addEventListener("htmx:oobAfterSwap", refocus);
  document.addEventListener("htmx:afterSwap", refocus);

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

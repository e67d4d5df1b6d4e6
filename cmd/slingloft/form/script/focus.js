// Where the keyboard is. What is drawn anew takes the focus along: it goes to what stands
// at the same place, else to what is given instead, and is never lost.

const trail = (within, e) => {
  if (e.id) return "#" + CSS.escape(e.id);
  const way = [];
  for (; e !== within; e = e.parentElement) way.unshift(e.tagName + ":nth-of-type(" + ([...e.parentElement.children].filter((o) => o.tagName === e.tagName).indexOf(e) + 1) + ")");
  return ":scope > " + way.join(" > ");
};
const keepFocus = (within, redraw, instead) => {
  const had = document.activeElement;
  const way = had && had !== within && within.contains(had) ? trail(within, had) : "";
  redraw();
  if (!way || had.isConnected) return;
  const now = within.querySelector(way);
  (now && now.tabIndex >= 0 ? now : instead || within).focus({ preventScroll: true });
};
// A button that has nothing to do stays where the keyboard is.
const enable = (button, on) => button.setAttribute("aria-disabled", !on);
const enabled = (button) => button.getAttribute("aria-disabled") !== "true";

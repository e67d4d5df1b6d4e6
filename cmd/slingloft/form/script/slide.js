// A slider on a length: while it moves the shape follows on a coarser net, and once it
// stops the exact one stands.
const slide = get("slide");
let sliding = null, moving = false, stops = 0;
const units = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 };
// measure reads a length as the file has it: its millimetres and its unit.
const measure = (text) => {
  const feet = /^(?:(\d+) *ft *)?(\d+(?:\.\d+)?)?(?:(?:^| +|-)(\d+)\/(\d+))? *in$/.exec(text);
  if (feet && (feet[2] || feet[3])) return { mm: (Number(feet[1] || 0) * 12 + Number(feet[2] || 0) + (feet[3] ? feet[3] / feet[4] : 0)) * units.in, unit: "in" };
  const plain = /^(-?\d+(?:\.\d+)?) *(mm|cm|m|in|ft)$/.exec(text);
  return plain && { mm: plain[1] * units[plain[2]], unit: plain[2] };
};
// length writes a length in a unit; inches in sixteenths, as a tape has them.
const length = (mm, unit) => {
  if (unit !== "in") return Number((mm / units[unit]).toFixed({ mm: 0, cm: 1 }[unit] ?? 3)) + " " + unit;
  let parts = Math.round(Math.abs(mm) / units.in * 16), below = 16;
  const whole = Math.floor(parts / 16);
  for (parts -= whole * 16; parts && parts % 2 === 0; parts /= 2) below /= 2;
  return (mm < 0 ? "-" : "") + [whole || !parts ? whole : "", parts ? parts + "/" + below : ""].filter((t) => t !== "").join(" ") + " in";
};
const slidable = (input) => input.tagName !== "SELECT" && measure(input.value || input.dataset[state && state.inches ? "in" : "mm"] || "");
// listSlides lists every length to choose from.
const listSlides = () => {
  const all = [...fields()].filter(slidable), box = get("slide-what");
  const key = all.map((i) => i.name).join(" ");
  if (box.dataset.shown !== key) {
    box.dataset.shown = key;
    box.replaceChildren(...all.map((i) => make("option", nameOf(i), { value: i.name })));
  }
  if (sliding) box.value = sliding.name;
};
const offerSlide = (input) => {
  const m = slidable(input);
  if (!m) return;
  const span = Math.max(Math.abs(m.mm) * 0.3, m.mm === 0 ? 50 : 1);
  sliding = { name: input.name, unit: m.unit, written: input.value };
  get("slide-what").value = input.name;
  slide.setAttribute("aria-label", nameOf(input));
  slide.min = m.mm < 0 ? m.mm - span : Math.max(0, m.mm - span);
  slide.max = m.mm + span;
  slide.step = m.unit === "in" || m.unit === "ft" ? units.in / 16 : Math.max(0.1, 10 ** Math.floor(Math.log10(span) - 1.7));
  slide.value = m.mm;
  showSlide();
};
get("slide-what").addEventListener("change", (e) => { const input = field(e.target.value); if (input) offerSlide(input); });
const slidden = () => length(Number(slide.value), sliding.unit);
const showSlide = () => {
  get("slide-value").textContent = slidden();
  slide.setAttribute("aria-valuetext", slidden());
};
const tryShape = async (value, coarse) => {
  const shape = await (await ask("try", { set: [{ field: sliding.name, value }], moving: coarse, at: model.section.station })).json();
  if (shape && coarse === moving) setModel(shape);
};
const follow = latest((value) => tryShape(value, true));
const settle = async () => {
  const mine = ++stops, value = slidden();
  await new Promise((done) => setTimeout(done, 100));
  if (mine !== stops) return;
  moving = false;
  await tryShape(value, false).catch(() => {});
  document.body.dataset.exact = mine;
};
slide.addEventListener("input", () => {
  if (!sliding || !model) return;
  moving = true;
  showSlide();
  const input = field(sliding.name);
  if (input) input.value = slidden();
  follow(slidden());
  settle();
});
slide.addEventListener("change", async () => {
  if (!sliding) return;
  turn++;
  await change("set", { set: [{ field: sliding.name, value: slidden() }], turn }).catch(refused);
});
for (const b of document.querySelectorAll("[data-step]")) {
  b.addEventListener("click", () => {
    if (!sliding) return;
    slide.value = Number(slide.value) + b.dataset.step * slide.step;
    slide.dispatchEvent(new Event("input"));
    slide.dispatchEvent(new Event("change"));
  });
}

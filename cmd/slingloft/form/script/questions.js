// What is asked before there is a design.

get("questions").addEventListener("submit", async (e) => {
  e.preventDefault();
  const answers = { inches: get("q-units").value === "in", take: {} };
  for (const name of ["stature", "mass", "shoulders", "lies", "distance", "height", "width", "bar", "cord", "strength"]) answers[name] = get("q-" + name).value.trim();
  for (const s of document.querySelectorAll("#questions select[data-take]")) if (s.value) answers.take[s.dataset.take] = s.value;
  get("q-wrong").textContent = "";
  for (const i of document.querySelectorAll("#questions [data-key]")) i.removeAttribute("aria-invalid");
  try {
    await change("propose", answers);
  } catch (err) {
    get("q-wrong").textContent = err.message;
    const wrong = document.querySelector('#questions [data-key="' + CSS.escape(err.field || "") + '"]');
    if (!wrong) return;
    wrong.setAttribute("aria-invalid", "true");
    wrong.focus();
  }
});
get("example").addEventListener("click", () => change("example", { inches: get("q-units").value === "in" }).catch(refused));
get("q-units").addEventListener("change", (e) => {
  const inches = e.target.value === "in";
  get("q-stature").value = inches ? "5 ft 8 in" : "1720 mm";
  get("q-mass").value = inches ? "165 lb" : "75 kg";
});

// ---- what lies beside the design

let shelved = "";
const lookBeside = async () => {
  const { machines, shelf } = await (await ask("beside")).json();
  const was = get("machine").value;
  get("machine").replaceChildren(get("machine").options[0], ...machines.map((m) => make("option", m, { value: m })));
  if (machines.includes(was)) get("machine").value = was;
  if (shelved === JSON.stringify(shelf)) return;
  shelved = JSON.stringify(shelf);
  for (const list of document.querySelectorAll("[data-take]")) {
    const names = shelf[list.dataset.take] || [];
    const options = names.map((n) => make("option", list.tagName === "SELECT" ? n : undefined, { value: n }));
    if (list.tagName === "SELECT") {
      list.replaceChildren(list.options[0], ...options);
      list.closest(".take").hidden = !names.length;
    } else list.replaceChildren(...options);
  }
};

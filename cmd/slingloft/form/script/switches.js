// Tables that turn something on by standing in the file.

const showSwitches = () => {
  for (const box of document.querySelectorAll("#form [data-switch]")) {
    const on = !!state.switches[box.dataset.switch];
    const tick = box.querySelector("input[type=checkbox]");
    tick.checked = on;
    tick.disabled = state.broken;
    box.querySelector(".fields").hidden = !on;
  }
};

get("form").addEventListener("change", async (e) => {
  const box = e.target.type === "checkbox" && e.target.closest("[data-switch]");
  if (!box) return;
  await flush();
  await change("switch", { table: box.dataset.switch, on: e.target.checked }).catch((err) => { refused(err); showSwitches(); });
});

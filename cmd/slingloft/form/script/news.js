// The program's news.

const receive = async (now) => {
  state = now;
  note = "";
  const begins = !get("begin").hidden && !state.ask;
  get("begin").hidden = !state.ask;
  get("rest").hidden = state.ask;
  get("show").hidden = state.ask;
  document.body.dataset.inches = state.inches;
  showFields();
  showFaults();
  showGuests();
  showStatus();
  showConflict();
  if (begins) get("title").focus(); // the questions are gone
  if (state.ask || !shelved) lookBeside().catch(() => {});
  keepSoon();
  await showSheet();
  if (!sliding && field("bed.span").value) offerSlide(field("bed.span"));
};
const listen = async () => {
  let since = -1;
  for (;;) {
    try {
      const now = await (await ask("state", { since })).json();
      since = now.number;
      await receive(now);
    } catch (e) {
      get("status").textContent = e.status === 401 ? say("refused") : say("away");
      document.body.dataset.away = "yes";
      if (e.status === 401) return;
      await new Promise((done) => setTimeout(done, 1000));
      since = -1;
    }
  }
};
listen();

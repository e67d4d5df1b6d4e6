// The design page: what is typed goes to the program at once, and what the program says
// comes back into the fields, beside them, and into the drawings.
const get = (id) => document.getElementById(id);
const said = JSON.parse(get("said").textContent);
const say = (key, with_ = {}) => said[key].replace(/\{(\w+)\}/g, (_, k) => with_[k]);
const make = (tag, text, props = {}) => Object.assign(document.createElement(tag), props, text === undefined ? {} : { textContent: text });

// The token came in the address, which no request and no log ever shows.
let token = location.hash.slice(1);
try {
  if (token) sessionStorage.setItem("token", token);
  else token = sessionStorage.getItem("token") || "";
} catch (e) { /* a page without storage asks again */ }
if (location.hash.length > 20) history.replaceState(null, "", location.pathname);

const send = (op, body, type) => alone ? sendHere(op, body) : fetch("ask/" + op, { method: "POST", body, headers: { Authorization: "Bearer " + token, "Content-Type": type || "application/json" } });
const ask = async (op, what = {}) => {
  const answer = await send(op, JSON.stringify(what));
  if (!answer.ok) throw Object.assign(new Error((await answer.text()).trim()), { status: answer.status, field: answer.headers.get("X-Field") });
  return answer;
};

// Changes arrive in the order in which they were made.
let last = Promise.resolve();
const change = (op, what) => {
  const now = last.then(() => ask(op, what));
  last = now.catch(() => {});
  return now;
};

let state = null;  // what the program said last
let drawn = 0;     // number of the sheet on the page
let note = "";     // what else the status says, until the next change
let turn = 1;      // rises with each new stay in a field
const pending = new Map(); // fields whose typing is not sent yet

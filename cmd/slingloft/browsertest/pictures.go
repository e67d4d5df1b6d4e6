package browsertest

import "fmt"

// Letters returns what is wrong with the pictures on the page: a picture without
// size or text alternative, lettering that stands over other lettering, and
// lettering that leaves its picture.
func (p *Page) Letters() []string {
	p.t.Helper()
	return Eval[[]string](p, fmt.Sprintf(lettersScript, slack))
}

// slack is by how much boxes of lettering may touch, mm in the picture: browsers
// count the room of accents and tails, which most lines do not use.
const slack = 0.35

const lettersScript = `(() => {
  const slack = %g, wrong = [];
  const corners = (t) => {
    const b = t.getBBox(), m = t.transform.baseVal.consolidate();
    const x0 = b.x + slack, x1 = b.x + b.width - slack, y0 = b.y + slack, y1 = b.y + b.height - slack;
    return [[x0, y0], [x1, y0], [x1, y1], [x0, y1]].map(([x, y]) => {
      const q = new DOMPoint(x, y);
      return m ? q.matrixTransform(DOMMatrix.fromMatrix(m.matrix)) : q;
    });
  };
  // Two convex quadrangles are apart where a line along one of their sides parts them.
  const apart = (a, b) => {
    for (const [p, q] of [[a, b], [b, a]]) {
      for (let i = 0; i < 4; i++) {
        const u = p[i], v = p[(i + 1) %% 4];
        const side = (w) => (v.x - u.x) * (w.y - u.y) - (v.y - u.y) * (w.x - u.x);
        if (q.every((w) => side(w) <= 0)) return true;
      }
    }
    return false;
  };
  const pictures = document.querySelectorAll("svg.pic");
  if (!pictures.length) wrong.push("no picture");
  for (const svg of pictures) {
    const r = svg.getBoundingClientRect();
    if (!(r.width > 40 && r.height > 10)) wrong.push(svg.id + " has no size");
    const words = (svg.getAttribute("aria-labelledby") || "").split(" ").map((i) => (document.getElementById(i) || {}).textContent || "");
    if (svg.getAttribute("role") !== "img" || words.length < 2 || words.some((w) => w.length < 8)) wrong.push(svg.id + " has no text alternative");
    const view = svg.viewBox.baseVal;
    const texts = [...svg.querySelectorAll("text")].map((t) => ({name: t.textContent, at: corners(t)}));
    texts.forEach((a, i) => {
      if (a.at.some((q) => q.x < -0.1 || q.y < -0.1 || q.x > view.width + 0.1 || q.y > view.height + 0.1)) wrong.push(svg.id + ": " + a.name + " leaves the picture");
      for (const b of texts.slice(i + 1)) if (!apart(a.at, b.at)) wrong.push(svg.id + ": " + a.name + " over " + b.name);
    });
  }
  return wrong;
})()`

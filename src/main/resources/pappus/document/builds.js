// What is told of a build, written from the page's data when the build is opened first: most never are.
const details = (() => {
  const told = pageData.details;
  const text = number => told.texts[number];

  function vector(name, attributes, text = "") {
    const made = document.createElementNS("http://www.w3.org/2000/svg", name);
    Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
    made.textContent = text;
    return made;
  }

  /** From above, to scale, with its key. */
  function planOf(plan) {
    const drawing = vector("svg", {
      viewBox: plan.view, width: plan.width, height: plan.height, role: "img",
      "aria-label": text(plan.title) + ". " + plan.key.join(" ") + " " + plan.distances
    });
    // Either a path, or radius and middle of circles.
    plan.shapes.forEach(([look, ...drawn]) => {
      if (typeof drawn[0] === "string") drawing.append(vector("path", {class: "plan-" + look, d: drawn[0]}));
      else for (let i = 0; i < drawn.length; i += 3)
        drawing.append(vector("circle", {class: "plan-" + look, r: drawn[i], cx: drawn[i + 1], cy: drawn[i + 2]}));
    });
    plan.words.forEach(([x, y, word, anchor, look]) =>
      drawing.append(vector("text", {class: "plan-" + look, x, y, "text-anchor": anchor}, word)));
    const caption = element("figcaption", "");
    caption.append(element("strong", text(plan.title)), " " + text(plan.caption));
    const drawn = element("div", "", {class: "plan"});
    drawn.append(drawing);
    const key = element("ol", "", {class: "plan-key"});
    plan.key.forEach(one => key.append(element("li", one)));
    const both = element("div", "", {class: "drawn"});
    both.append(drawn, key);
    const figure = element("figure", "");
    figure.append(caption, both);
    return figure;
  }

  /** The room to everything that bounds it, with a bar for each share. */
  function roomsOf(build) {
    const rows = build.rooms.map(([bound, share, has]) => {
      const [what, allowed] = told.bounds[bound];
      return [what, share, "", has, allowed];
    });
    const table = tableOf("Room: " + build.title,
      [["what", false], ["room", true], ["", false], ["it has", true], ["allowed", false]], rows);
    rows.forEach(([, share], i) => {
      const bar = vector("svg", {class: "share", viewBox: "0 0 100 8", preserveAspectRatio: "none", "aria-hidden": "true"});
      bar.append(vector("rect", {width: Math.max(0, Math.min(100, parseFloat(share))), height: 8}));
      table.tBodies[0].rows[i].cells[2].append(bar);
    });
    return scrolling(table.caption.textContent, table);
  }

  function fill(box) {
    const build = told.builds[box.id];
    if (box.dataset.filled) return;
    box.dataset.filled = "yes";
    const content = document.getElementById("details").content.cloneNode(true);
    const fold = name => content.querySelector(`[data-fold=${name}]`);
    content.querySelectorAll("[data-fold]").forEach(one => { one.id = box.id + "-" + one.dataset.fold; });
    const first = content.querySelector(".told-of");
    build.first.forEach(number => first.firstElementChild.append(element("p", text(number))));
    first.firstElementChild.append(charts.figure(build.mass));
    first.append(planOf(build.plan));
    const parts = "Parts: " + build.title;
    fold("parts").append(scrolling(parts, tableOf(parts, told.columns, build.parts.map(row => told.parts[row]))));
    build.words.forEach(number => fold("words").append(element("p", text(number))));
    const notes = element("ul", "");
    build.notes.forEach(number => notes.append(element("li", text(number))));
    if (build.notes.length) fold("words").append(notes);
    fold("room").append(roomsOf(build));
    const rings = box.querySelector("template.rings-of");
    if (rings) {
      rings.content.querySelectorAll("table.rows").forEach(named);
      fold("curves").lastElementChild.append(rings.content);
    }
    build.curves.forEach(chart => fold("curves").lastElementChild.append(charts.figure(chart)));
    box.append(content);
  }

  const boxes = [...document.querySelectorAll("details.build")];
  boxes.forEach(box => {
    box.addEventListener("toggle", () => { if (box.open) fill(box); });
    if (box.open) fill(box);
  });

  /** Writes the build that something of this name is of, if it is not written yet. */
  return {have: id => boxes.filter(box => id === box.id || id.startsWith(box.id + "-")).forEach(fill)};
})();

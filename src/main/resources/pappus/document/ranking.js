// The ranking: sorting it, setting two candidates side by side, and looking the best build up on the front.

// --- sorting -------------------------------------------------------------------------------------
document.querySelectorAll("table.sortable").forEach(table => {
  const heads = [...table.tHead.rows[0].cells];
  heads.forEach((head, column) => {
    const button = head.querySelector("button");
    if (!button) return;
    button.addEventListener("click", () => {
      const up = head.getAttribute("aria-sort") !== "ascending";
      heads.forEach(one => one.removeAttribute("aria-sort"));
      head.setAttribute("aria-sort", up ? "ascending" : "descending");
      const value = row => row.cells[column].dataset.value;
      const numbers = head.classList.contains("num");
      [...table.tBodies[0].rows]
        .sort((a, b) => (up ? 1 : -1) * (numbers ? value(a) - value(b) : value(a).localeCompare(value(b), "en")))
        .forEach(row => table.tBodies[0].append(row));
    });
  });
});

// --- links to what is closed ---------------------------------------------------------------------
const openTarget = () => {
  const target = location.hash && document.getElementById(location.hash.slice(1));
  if (target && target.tagName === "DETAILS") { target.open = true; target.scrollIntoView(); }
};
addEventListener("hashchange", openTarget);
openTarget();

// --- two candidates side by side -----------------------------------------------------------------
const element = (name, text, attributes = {}) => {
  const made = document.createElement(name);
  made.textContent = text;
  Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
  return made;
};

const compareBox = document.getElementById("compared");
if (compareBox) {
  const chosen = [];
  const boxes = [...document.querySelectorAll("input[data-compare]")];
  const show = () => {
    if (chosen.length < 2) {
      compareBox.replaceChildren(element("p", chosen.length === 1
        ? "Candidate " + chosen[0] + " and which other? Choose one more."
        : "Choose two candidates in the ranking to see in what they differ."));
      return;
    }
    const [one, other] = [...chosen].sort((a, b) => a - b);
    const rows = pageData.compare
      .map(row => ({label: row.label, left: row.values[one - 1], right: row.values[other - 1]}))
      .filter(row => row.left !== "-" || row.right !== "-");
    const differs = row => row.left !== row.right;
    const ordered = [...rows.filter(differs), ...rows.filter(row => !differs(row))];
    const table = element("table", "");
    table.append(element("caption", "Candidates " + one + " and " + other + ", what differs first and shaded"));
    const head = table.createTHead().insertRow();
    ["", "candidate " + one, "candidate " + other].forEach((text, i) =>
      head.append(i ? element("th", text, {scope: "col"}) : element("td", "")));
    const body = table.createTBody();
    ordered.forEach(row => {
      const line = body.insertRow();
      if (differs(row)) line.className = "differs";
      line.append(element("th", row.label, {scope: "row"}), element("td", row.left), element("td", row.right));
    });
    compareBox.replaceChildren(table);
  };
  boxes.forEach(box => box.addEventListener("change", () => {
    const number = Number(box.dataset.compare);
    if (box.checked) chosen.push(number); else chosen.splice(chosen.indexOf(number), 1);
    if (chosen.length > 2) {
      const dropped = chosen.shift();
      boxes.find(other => Number(other.dataset.compare) === dropped).checked = false;
    }
    show();
  }));
  boxes.forEach(box => { if (box.checked) chosen.push(Number(box.dataset.compare)); });
  show();
}

// --- the best build within two dials -------------------------------------------------------------
const picked = document.getElementById("picked");
if (picked) {
  const pick = pageData.pick;
  const mass = document.getElementById("dial-mass");
  const budget = document.getElementById("dial-budget");
  const [NEEDED, CENTS, FIGURE, HEIGHT, GRAMS, THRUST, WATTS, PARTS] = d3.range(8);
  const typed = build => build[PARTS].map(i => pick.parts[i]).map(part => part[2] + (part[3] > 1 ? "*" + part[3] : "")).join(",");

  function edges(best) {
    const said = [];
    if (mass.value === mass.max) said.push("The mass dial is at the scenario's own cap: heavier builds were not looked for.");
    if (budget.value === budget.max) said.push(pick.hasBudget
      ? "The budget dial is at the scenario's own budget: dearer builds were not looked for."
      : "No budget was asked for: nothing on the front costs more.");
    if (best && !(best[HEIGHT] >= pick.downToValue))
      said.push("The front is " + pick.downTo + ": something better within these limits may have been missed.");
    if (!best) said.push("The front is " + pick.downTo + ": whether anything that flies less keeps both was not looked for.");
    return said;
  }

  function show() {
    const most = Math.round(mass.value * 1000) - (pick.strict ? 1 : 0);
    const cents = Math.round(budget.value * 100);
    document.getElementById("dial-mass-value").textContent = mass.value + " g";
    document.getElementById("dial-budget-value").textContent = pick.currency + " " + budget.value;
    const best = pick.builds.find(build => build[NEEDED] <= most && build[CENTS] <= cents);
    picked.replaceChildren();
    picked.dataset.build = best ? typed(best) : "";
    if (best) {
      picked.append(element("p", best[PARTS].slice(0, 4).map(i => pick.parts[i][1]).join(", "), {class: "chosen"}));
      picked.append(element("p", best[FIGURE] + "; " + best[GRAMS].toFixed(1) + " g all-up; thrust over weight "
        + best[THRUST].toFixed(1) + "; " + best[WATTS].toFixed(0) + " W; " + pick.currency + " " + (best[CENTS] / 100).toFixed(2) + "."));
      const list = element("ul", "");
      best[PARTS].map(i => pick.parts[i]).forEach(part =>
        list.append(element("li", part[0] + ": " + part[1] + (part[3] > 1 ? ", " + part[3] + " of them" : ""))));
      const details = element("details", "");
      details.append(element("summary", "Its parts"), list, element("p", "To type behind assess SCENARIO:"), element("code", typed(best)));
      picked.append(details);
      charts.ring("by-mass", best[GRAMS], best[HEIGHT]);
      charts.ring("by-price", best[CENTS] / 100, best[HEIGHT]);
    } else {
      picked.append(element("p", "No build of the front keeps both."));
    }
    edges(best).forEach(text => picked.append(element("p", text, {class: "edge"})));
  }
  mass.addEventListener("input", show);
  budget.addEventListener("input", show);
  show();
}

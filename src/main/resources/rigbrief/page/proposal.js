(function () {
  "use strict";
  var steps = JSON.parse(document.getElementById("steps").textContent);
  var money = document.getElementById("money");
  function byId(id) { return document.getElementById(id); }
  function element(name, text, kind) {
    var made = document.createElement(name);
    if (text) { made.textContent = text; }
    if (kind) { made.className = kind; }
    return made;
  }
  function list(id, texts) {
    var ul = byId(id);
    ul.previousElementSibling.hidden = ul.hidden = texts.length === 0;
    ul.replaceChildren.apply(ul, texts.map(function (text) { return element("li", text); }));
  }
  function bar(svg, need) {
    var marks = svg.querySelectorAll("rect,path");
    svg.setAttribute("aria-label", need.words);
    svg.querySelector("title").textContent = need.words;
    marks[1].setAttribute("x", 8 + need.from);
    marks[1].setAttribute("width", Math.max(1, need.to - need.from));
    marks[2].setAttribute("d", "M" + (8 + need.at) + " 9V26");
  }
  function promise(item, need) {
    item.querySelector(".promised").textContent = need.promised;
    item.querySelector(".said").textContent = need.range;
    item.querySelector(".verdict").textContent = need.verdict;
    bar(item.querySelector("svg"), need);
  }
  function row(part) {
    var tr = element("tr", "", part.changed ? "changed" : "");
    var head = element("th");
    head.scope = "row";
    head.append(element("span", part.place, "place"), " ",
        element("span", part.name, "part-name"), element("span", part.what, "reason"));
    tr.append(head, element("td", part.supplier), element("td", part.price, "num"));
    return tr;
  }
  function figure(one) {
    var p = element("p", one.words);
    p.append(element("span", one.numbers, "reason"));
    return p;
  }
  function show() {
    var step = steps[Number(money.value)];
    money.setAttribute("aria-valuetext", step.value);
    byId("step-shown").textContent = step.shown;
    byId("step-caption").textContent = step.shown;
    byId("step-tier").textContent = step.tier;
    byId("step-more").textContent = step.more;
    byId("here").setAttribute("cx", step.x);
    byId("here").setAttribute("cy", step.y);
    list("step-buys", step.buys);
    list("step-gives", step.gives);
    list("step-changes", step.changes);
    var items = byId("step-needs").children;
    (step.needs || []).forEach(function (need, i) { promise(items[i], need); });
    var figures = byId("step-figures");
    figures.replaceChildren.apply(figures, (step.figures || []).map(figure));
    var body = byId("step-parts").tBodies[0];
    body.replaceChildren.apply(body, step.parts.map(row));
  }
  money.addEventListener("input", show);
  byId("slide").hidden = false;
  byId("all-steps").open = false;
  show();
}());

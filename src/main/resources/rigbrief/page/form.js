"use strict";
(function () {
  var FASTER = 1.5;
  // As they are typed, in the languages that the page has.
  var UNITS = {
    s: ["s", "sec", "second", "seconds", "sek", "sekunde", "sekunden"],
    m: ["m", "min", "minute", "minutes", "minuten"],
    h: ["h", "hour", "hours", "std", "stunde", "stunden"]
  };
  var page = document.getElementById("content");
  var currency = page.dataset.currency;
  var sign = page.dataset.sign;
  var decimals = Number(page.dataset.decimals);
  var kept = [];
  var faults = [];

  function by(id) { return document.getElementById(id); }
  function typed(id) { return by(id).value.trim(); }
  function chosen(name) { return document.querySelector('input[name="' + name + '"]:checked'); }
  function ticked(name) {
    return Array.from(document.querySelectorAll('input[name="' + name + '"]:checked'), function (box) { return box.value; });
  }
  // A text of the page with its places filled.
  function say(key) {
    var text = document.querySelector('#say [data-say="' + key + '"]').textContent;
    for (var i = 1; i < arguments.length; i++) { text = text.split("{" + (i - 1) + "}").join(arguments[i]); }
    return text;
  }
  function any(id) { return ["any", page.dataset.any].indexOf(typed(id).toLowerCase()) >= 0; }
  function show(id, shown) { by(id).hidden = !shown; }

  // What opens and closes with an answer.
  function refresh() {
    var titles = Array.from(document.querySelectorAll(".form-title"));
    titles.forEach(function (title) {
      var more = title.querySelector(".form-more");
      var box = title.querySelector("input");
      if (more) { more.hidden = !box.checked; box.setAttribute("aria-expanded", String(box.checked)); }
    });
    var screen = chosen("screen").value;
    show("screen-more", screen !== "unknown");
    show("sockets-more", screen === "own");
    show("noise-more", chosen("noise").value !== "any");
    show("colour-more", by("colour").value !== "any");
    open(titles.filter(function (title) { return title.querySelector("input").checked; }));
    by("brief").hidden = true;
  }

  function open(titles) {
    var before = ticked("open");
    var list = by("open-list");
    var wanted = titles.map(function (title) { return title.dataset.id; }).join(" ");
    show("open", titles.length > 1);
    if (list.dataset.shown === wanted) { return; }
    list.dataset.shown = wanted;
    list.textContent = "";
    titles.forEach(function (title) {
      var label = document.createElement("label");
      var box = document.createElement("input");
      var name = document.createElement("span");
      label.className = "form-choice";
      box.type = "checkbox";
      box.name = "open";
      box.value = title.dataset.id;
      box.checked = before.indexOf(box.value) >= 0;
      name.textContent = title.querySelector("b").textContent;
      label.append(box, name);
      list.append(label);
    });
  }

  // Reading, with everything that is wrong said at once.
  function wrong(id, message) {
    faults.push({ id: id, message: message });
    by(id).setAttribute("aria-invalid", "true");
    if (by(id + "-wrong")) { by(id + "-wrong").textContent = message; }
    return 0;
  }

  function forget() {
    faults = [];
    document.querySelectorAll("[aria-invalid]").forEach(function (field) { field.removeAttribute("aria-invalid"); });
    document.querySelectorAll(".form-wrong").forEach(function (place) { place.textContent = ""; });
  }

  function whole(id, least, most) {
    var entry = typed(id);
    if (/^[0-9]{1,7}$/.test(entry) && Number(entry) >= least && Number(entry) <= most) { return Number(entry); }
    return wrong(id, say("whole", least, most));
  }

  function wholeOrAny(id, least, most) {
    return any(id) ? "" : String(whole(id, least, most));
  }

  function money(id) {
    var entry = typed(id).replace(currency, "").replace(sign, "").replace("\u00a0", " ").trim();
    var parted = /^[0-9]{1,3}(,[0-9]{3})+[.][0-9]{1,2}$/.test(entry) ? "," : /^[0-9]{1,3}([.][0-9]{3})+,[0-9]{1,2}$/.test(entry) ? "." : "";
    var plain = (parted ? entry.split(parted).join("") : entry).replace(",", ".");
    var grouped = /^[0-9]{1,3}[.,'][0-9]{3}$/.test(entry) && decimals !== 3;
    var form = new RegExp("^[0-9]{1,9}" + (decimals > 0 ? "([.][0-9]{1," + decimals + "})?" : "") + "$");
    if (!grouped && form.test(plain) && Number(plain) > 0 && Number(plain) <= 100000000) { return plain; }
    return wrong(id, say("money"));
  }

  function percent(id) {
    var entry = typed(id).replace("%", "").trim().replace(",", ".");
    if (/^[0-9]{1,2}([.][0-9]{1,2})?$/.test(entry) && Number(entry) <= 50) { return entry; }
    return wrong(id, say("percent"));
  }

  function duration(id) {
    var found = /^([0-9]{1,6}(?:[.,][0-9]{1,2})?) *([a-z]+)$/.exec(typed(id).toLowerCase());
    var unit = found ? Object.keys(UNITS).filter(function (sign) { return UNITS[sign].indexOf(found[2]) >= 0; })[0] : "";
    var factor = unit ? { s: 1, m: 60, h: 3600 }[unit] : 0;
    var figure = found ? found[1].replace(",", ".") : "0";
    var seconds = Math.round(Number(figure) * 100) * factor / 100;
    if (seconds > 0 && seconds <= 3600000) { return { text: figure + unit, seconds: seconds }; }
    wrong(id, say("time"));
    return null;
  }

  // Characters that print nothing are written as escapes, so that nothing hides in a name.
  function quoted(text) {
    var out = '"';
    Array.from(text).forEach(function (sign) {
      var code = sign.codePointAt(0);
      if (sign === '"' || sign === "\\") {
        out += "\\" + sign;
      } else if (/[\p{L}\p{M}\p{N}\p{P}\p{S} ]/u.test(sign)) {
        out += sign;
      } else {
        out += code > 0xffff ? "\\U" + code.toString(16).padStart(8, "0") : "\\u" + code.toString(16).padStart(4, "0");
      }
    });
    return out + '"';
  }

  function list(values) { return "[" + values.map(quoted).join(", ") + "]"; }

  function speeds(title, lines) {
    var id = title.dataset.id;
    if (title.dataset.kind === "game") {
      var level = by("smooth-" + id).selectedOptions[0];
      if (level.dataset.figure) {
        var rates = level.dataset.figure.split("/").map(Number);
        var cap = title.dataset.cap ? Number(title.dataset.cap) : Infinity;
        if (rates[0] > cap) { wrong("smooth-" + id, say("cap", cap)); }
        lines.push("    must: { average: " + rates[0] + ", low: " + rates[1] + " }");
        if (chosen("faster").value === "yes") {
          lines.push("    wish: { average: " + Math.min(Math.round(rates[0] * FASTER), cap) + " }");
        }
      }
      pictures(id, lines);
    } else if (title.dataset.kind === "task" && !any("time-" + id)) {
      var time = duration("time-" + id);
      if (time) {
        var sooner = time.seconds / FASTER;
        var wish = sooner >= 10 ? Math.round(sooner) : Math.max(1, Math.round(100 * sooner)) / 100;
        lines.push("    must: { finish-within: " + time.text + " }");
        if (chosen("faster").value === "yes") { lines.push("    wish: { finish-within: " + wish + "s }"); }
      }
    }
  }

  function pictures(id, lines) {
    var steps = [];
    [["preset", ""], ["rays", "off"], ["upscaling", ""]].forEach(function (pair) {
      var field = by(pair[0] + "-" + id);
      if (field && field.value !== pair[1]) { steps.push(pair[0] + ": " + quoted(field.value)); }
    });
    if (steps.length) { lines.push("    with: { " + steps.join(", ") + " }"); }
  }

  function workloads(lines) {
    var titles = Array.from(document.querySelectorAll(".form-title")).filter(function (title) {
      return title.querySelector("input").checked;
    });
    if (titles.length) { lines.push("workloads:"); }
    titles.forEach(function (title) {
      lines.push("  - use: " + title.dataset.id);
      speeds(title, lines);
    });
    if (titles.length > 1 && ticked("open").length) { lines.push("at-once: " + list(ticked("open"))); }
    return titles.map(function (title) { return title.dataset.id; });
  }

  function display(lines) {
    var which = chosen("screen").value;
    if (which === "unknown") { return; }
    var picture = typed("picture").toLowerCase().replace("×", "x").replace(/ /g, "");
    if (!/^[1-9][0-9]{2,4}x[1-9][0-9]{2,4}$/.test(picture)) { wrong("picture", say("picture")); }
    lines.push("display:");
    lines.push("  resolution: " + picture);
    lines.push("  refresh: " + whole("refresh", 24, 1000));
    if (which === "own" && ticked("sockets").length) { lines.push("  inputs: " + list(ticked("sockets"))); }
    lines.push("  count: " + whole("screens", 1, 4));
    if (which === "buy") { lines.push("  buy: yes"); }
  }

  function nature(lines) {
    var looks = ["lighting: " + chosen("lights").value];
    if (by("colour").value !== "any") {
      looks.push("colour: " + by("colour").value);
      if (chosen("colour-strength").value === "must") { looks.push("colour-must: yes"); }
    }
    looks.push("side: " + chosen("side").value);
    lines.push("looks: { " + looks.join(", ") + " }");
    if (chosen("noise").value !== "any") {
      lines.push("noise: { " + chosen("noise-strength").value + ": " + chosen("noise").dataset.figure + ", distance: " + chosen("place").dataset.figure + " }");
    }
    if (chosen("size").value !== "any") { lines.push("size: { at-most-litres: " + chosen("size").dataset.figure + " }"); }
  }

  function rest(lines, uses) {
    lines.push("wireless: " + chosen("wireless").value);
    lines.push("storage: { at-least: " + whole("storage", 0, 200000) + (uses.length ? ", room-for: " + list(uses) : "") + " }");
    if (ticked("front").length) { lines.push("front-ports: " + list(ticked("front"))); }
    lines.push("system: " + chosen("system").value);
    if (kept.length) { lines.push("keep:"); }
    kept.forEach(function (part) {
      lines.push("  - { slot: " + part.slot + ", part: " + part.id + ", pieces: " + part.pieces + " }");
    });
    if (ticked("makers").length) { lines.push("avoid: { makers: " + list(ticked("makers")) + " }"); }
    var buying = [];
    var shops = wholeOrAny("shops", 1, 100);
    var days = wholeOrAny("days", 0, 365);
    if (shops) { buying.push("at-most-suppliers: " + shops); }
    if (days) { buying.push("within-days: " + days); }
    if (buying.length) { lines.push("buying: { " + buying.join(", ") + " }"); }
    wishes(lines);
  }

  function wishes(lines) {
    var first = [];
    [0, 1, 2].forEach(function (place) {
      var goal = by("goal-" + place).value;
      if (goal && first.indexOf(goal) >= 0) { wrong("goal-" + place, say("twice")); }
      if (goal) { first.push(goal); }
    });
    if (!first.length) { return; }
    var weights = ["workloads: 4"];
    Array.from(by("goal-0").options).forEach(function (goal) {
      var place = first.indexOf(goal.value);
      if (goal.value) { weights.push(goal.value + ": " + (place < 0 ? 1 : 5 - place)); }
    });
    lines.push("wishes: { " + weights.join(", ") + " }");
  }

  function written() {
    forget();
    var name = typed("client");
    if (!name) { wrong("client", say("name")); }
    if (Array.from(name).length > 120) { wrong("client", say("name-long")); }
    if (/[^\p{L}\p{M}\p{N}\p{P}\p{S} ]/u.test(name)) { wrong("client", say("name-signs")); }
    var lines = ["client: " + quoted(name), "currency: " + currency, "quantity: " + whole("quantity", 1, 10000)];
    var later = [];
    display(later);
    var uses = workloads(later);
    nature(later);
    rest(later, uses);
    lines.push("ceiling: " + money("ceiling"), "overrun: " + percent("overrun") + "%");
    return lines.concat(later).join("\n") + "\n";
  }

  function complain() {
    var list = by("faults-list");
    list.textContent = "";
    by("faults-head").textContent = faults.length === 1 ? say("fault") : say("faults", faults.length);
    faults.forEach(function (fault) {
      var item = document.createElement("li");
      var link = document.createElement("a");
      var label = document.querySelector('label[for="' + fault.id + '"]');
      link.href = "#" + fault.id;
      link.textContent = (label ? label.textContent.replace(/[?]?$/, ": ") : "") + fault.message;
      link.addEventListener("click", function (event) { event.preventDefault(); by(fault.id).focus(); });
      item.append(link);
      list.append(item);
    });
    show("faults", true);
    by("faults").focus();
  }

  by("form").addEventListener("submit", function (event) {
    event.preventDefault();
    refresh();
    var text = written();
    show("faults", false);
    if (faults.length) { complain(); return; }
    by("text").value = text;
    by("copied").textContent = "";
    by("save").href = URL.createObjectURL(new Blob([text], { type: "text/yaml" }));
    show("brief", true);
    by("brief-head").focus();
  });

  by("form").addEventListener("change", refresh);

  by("copy").addEventListener("click", function () {
    by("text").select();
    var done = false;
    try { done = document.execCommand("copy"); } catch (refused) { done = false; }
    by("copied").textContent = say(done ? "copied" : "marked");
  });

  by("keep").addEventListener("click", function () {
    var option = by("kept").selectedOptions[0];
    by("kept-wrong").textContent = "";
    if (!option.value) { by("kept-wrong").textContent = say("choose"); return; }
    keep(option);
    listKept();
    refresh();
  });

  function keep(option) {
    var same = kept.filter(function (part) { return part.id === option.value; })[0];
    if (same) { same.pieces += 1; return; }
    var slots = option.dataset.slot === "drive" ? ["drive", "second-drive"] : [option.dataset.slot];
    var free = slots.filter(function (slot) {
      return kept.every(function (part) { return part.slot !== slot; });
    })[0];
    if (!free) { by("kept-wrong").textContent = say("no-place"); return; }
    kept.push({ slot: free, id: option.value, name: option.textContent, pieces: 1 });
  }

  function listKept() {
    by("kept-list").textContent = "";
    kept.forEach(function (part) {
      var item = document.createElement("li");
      var off = document.createElement("button");
      item.textContent = (part.pieces > 1 ? say("pieces", part.name, part.pieces) : part.name) + " ";
      off.type = "button";
      off.textContent = say("off");
      off.setAttribute("aria-label", say("off-part", part.name));
      off.addEventListener("click", function () {
        kept = kept.filter(function (other) { return other !== part; });
        listKept();
        refresh();
        by("kept").focus();
      });
      item.append(off);
      by("kept-list").append(item);
    });
  }

  refresh();
}());

"use strict";

const byId = id => document.getElementById(id);

function element(tag, attributes = {}, ...children) {
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (name.startsWith("on")) node.addEventListener(name.slice(2), value);
    else if (value === true) node.setAttribute(name, "");
    else if (value !== false) node.setAttribute(name, value);
  }
  node.append(...children);
  return node;
}

const path = (...parts) => "/" + parts.map(encodeURIComponent).join("/");

async function press(address, fields) {
  const answer = await fetch(address, {method: "POST", body: new URLSearchParams(fields)});
  await look();
  return answer;
}

// Only what changed is drawn again, so that nobody loses the button under their finger.
const drawn = new Map();
function changed(what, value) {
  const now = JSON.stringify(value);
  if (drawn.get(what) === now) return false;
  drawn.set(what, now);
  return true;
}

function showNight(night) {
  byId("clock").textContent = night.clock || "\u00a0";
  if (changed("gateway", [night.ready, night.gateway, night.lastWords])) {
    if (night.ready) byId("speed").textContent = `Time at the sites, ${night.speed} times as fast as yours.`;
    byId("gateway").hidden = !night.ready;
    byId("board").href = night.gateway;
    byId("login").textContent = night.login;
    byId("password").textContent = night.password;
    byId("trouble").hidden = night.lastWords.length === 0;
    byId("last-words").textContent = night.lastWords.join("\n");
  }
  const road = byId("road");
  for (const [time, who, what] of night.timeline.slice(road.children.length)) {
    road.append(element("li", {}, element("time", {}, time), element("span", {}, element("b", {}, who), " ", what)));
  }
}

function showPhones(phones) {
  for (const phone of phones) {
    const slips = byId("slips-" + phone.person) ?? pocket(phone);
    for (const text of phone.texts.slice(slips.children.length)) {
      slips.append(slip(text));
      slips.scrollTop = slips.scrollHeight;
    }
  }
}

function slip(text) {
  const where = text.mail ? " by mail" : "";
  const item = element("li", {class: text.mail ? "mail" : "text"}, element("time", {}, text.time + where), text.body);
  if (text.link) item.append(element("br"), element("a", {href: text.link, target: "_blank", rel: "noopener"}, "Open the link"));
  return item;
}

function pocket(phone) {
  const slips = element("ol", {class: "slips", id: "slips-" + phone.person, "aria-live": "polite", "aria-label": "Texts to " + phone.name, tabindex: "0"});
  const line = element("p", {class: "line", role: "status"});
  const words = element("input", {name: "text", "aria-label": "Reply as " + phone.name, placeholder: "OK 47", maxlength: "160", required: true});
  const send = async event => {
    event.preventDefault();
    const answer = await press(path("phones", phone.person, "reply"), {text: words.value});
    line.textContent = answer.ok ? (await answer.json()).line : "The demo did not take that.";
    words.value = "";
  };
  byId("phones").append(element("article", {class: "pocket"},
    element("h3", {}, phone.name),
    element("span", {class: "number"}, phone.number),
    slips,
    element("form", {onsubmit: send}, words, element("button", {}, "Send")),
    line));
  return slips;
}

function showSites(sites) {
  for (const site of sites) {
    if (!changed("site " + site.id, site)) continue;
    const old = byId("site-" + site.id);
    const focus = old?.contains(document.activeElement) ? document.activeElement.dataset.key : null;
    const fresh = sheet(site);
    if (old) old.replaceWith(fresh); else byId("sites").append(fresh);
    if (focus) fresh.querySelector(`[data-key="${focus}"]`)?.focus();
  }
}

function sheet(site) {
  const kept = site.kept ? ` ${site.kept} events wait in the box.` : "";
  return element("article", {class: "sheet", id: "site-" + site.id},
    element("h3", {}, site.name),
    element("p", {}, site.character + kept),
    ...site.gauges.map(gauge => gaugeRow(site, gauge)),
    ...site.feeds.map(feed => row(`Mains, feed ${feed.name}`, "", feed.on ? "on" : "off", !feed.on,
      button("feed " + feed.name, feed.on ? "Cut" : "Restore", path("sites", site.id, "feeds", feed.name), {on: !feed.on}))),
    row("Link of the box", "", site.linked ? "up" : "broken", !site.linked,
      button("link", site.linked ? "Break" : "Mend", path("sites", site.id, "link"), {up: !site.linked})));
}

function gaugeRow(site, gauge) {
  const address = path("sites", site.id, "gauges", gauge.point);
  const buttons = [button(gauge.point, gauge.button, address, {beyond: !gauge.beyond})];
  if (gauge.turns) buttons.push(button(gauge.point + " chatter", "Chatter", address + "/chatter", {}));
  return row(gauge.label, gauge.limit, gauge.shows, gauge.beyond, ...buttons);
}

function row(label, small, shows, beyond, ...buttons) {
  return element("div", {class: beyond ? "row beyond" : "row"},
    element("span", {}, label, element("small", {}, small)),
    element("output", {}, shows),
    element("span", {class: "buttons"}, ...buttons));
}

function button(key, label, address, fields) {
  return element("button", {type: "button", "data-key": key, onclick: () => press(address, fields)}, label);
}

async function look() {
  const get = async address => (await fetch(address)).json();
  const [night, phones, sites] = await Promise.all(["/night", "/phones", "/sites"].map(get));
  showNight(night);
  showPhones(phones);
  if (night.ready) showSites(sites);
}

async function watch() {
  try {
    await look();
  } catch (away) {
    byId("speed").textContent = "The demo has ended.";
  }
  setTimeout(watch, 700);
}

watch();

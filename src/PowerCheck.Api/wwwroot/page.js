// Answers while one types. The page does everything without this, too.
(() => {
  "use strict";
  const form = document.getElementById("form");
  if (!form || !window.fetch || !window.DOMParser) return;
  const wait = 600;
  let timer = 0;
  let call = null;

  // What the form says, without what it leaves empty.
  const query = (submitter) => {
    const said = new URLSearchParams();
    for (const [name, value] of new FormData(form)) {
      if (value.trim() !== "") said.append(name, value);
    }
    const button = submitter ?? form.querySelector(".check");
    if (button.name) said.append(button.name, button.value);
    return said;
  };

  const swap = (from, to) => to.replaceChildren(...from.cloneNode(true).childNodes);

  // Fields keep what is typed and where the cursor stands; only what is said about them changes.
  const takeField = (next) => {
    const id = "[id='" + next.id + "']";
    const now = form.querySelector(id);
    if (!now) return;
    for (const name of ["aria-invalid", "placeholder"]) {
      const value = next.getAttribute(name);
      if (value === null) now.removeAttribute(name);
      else now.setAttribute(name, value);
    }
    if (now.tagName === "SELECT") now.options[0].text = next.options[0].text;
    const notes = document.getElementById(now.getAttribute("aria-describedby"));
    const newNotes = next.ownerDocument.getElementById(next.getAttribute("aria-describedby"));
    if (notes && newNotes) swap(newNotes, notes);
  };

  // A list gets a new blank row when its last one is filled.
  const takeRows = (next) => {
    const now = form.querySelector("[data-rows='" + next.dataset.rows + "']");
    if (!now) return;
    for (const row of [...next.children].slice(now.children.length)) now.append(row.cloneNode(true));
  };

  const take = (page) => {
    for (const id of ["answer", "strip"]) swap(page.getElementById(id), document.getElementById(id));
    page.querySelectorAll("#form input[id], #form select[id]").forEach(takeField);
    page.querySelectorAll("#form [data-rows]").forEach(takeRows);
    page.querySelectorAll("#form details[open]").forEach((part) => {
      const now = document.getElementById(part.id);
      if (now && part.querySelector(".mistake")) now.open = true;
    });
    document.title = page.title;
    const link = page.querySelector("link[rel=canonical]");
    if (link) history.replaceState(null, "", link.href);
    readyCopy();
  };

  const ask = async () => {
    call?.abort();
    const mine = (call = new AbortController());
    document.getElementById("answer").setAttribute("aria-busy", "true");
    try {
      const answer = await fetch(form.getAttribute("action").split("#")[0] + "?" + query(), {
        signal: mine.signal,
        headers: { Accept: "text/html" },
      });
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      if (mine === call && page.getElementById("form")) take(page);
    } catch (error) {
      if (error.name !== "AbortError") {
        document.getElementById("strip").textContent = "No connection: not checked";
      }
    } finally {
      if (mine === call) document.getElementById("answer").removeAttribute("aria-busy");
    }
  };

  const readyCopy = () => {
    const button = document.getElementById("copy");
    const link = document.getElementById("share");
    if (!button || !link || !navigator.clipboard) return;
    button.hidden = false;
    button.onclick = async () => {
      await navigator.clipboard.writeText(link.value);
      button.textContent = "Copied";
    };
  };

  form.addEventListener("input", () => {
    clearTimeout(timer);
    timer = setTimeout(ask, wait);
  });

  form.addEventListener("submit", (event) => {
    event.preventDefault();
    clearTimeout(timer);
    call?.abort();
    const target = event.submitter?.getAttribute("formaction") ?? form.getAttribute("action");
    const [path, anchor] = target.split("#");
    const next = path + "?" + query(event.submitter) + (anchor ? "#" + anchor : "");
    const isHere = new URL(next, location.href).href === location.href;
    if (isHere) document.getElementById("answer").scrollIntoView();
    else location.assign(next);
  });

  // A field that a sentence leads to may stand in a closed group.
  const open = () => {
    const field = document.getElementById(decodeURIComponent(location.hash.slice(1)));
    const group = field && field.closest("details");
    if (group) group.open = true;
    if (field && field.matches("input, select")) field.focus();
  };
  addEventListener("hashchange", open);
  open();
  readyCopy();
  const own = document.querySelector("link[rel=canonical]");
  if (own) history.replaceState(null, "", own.href + location.hash);
})();

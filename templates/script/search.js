(() => {
  const field = document.getElementById("search");
  const list = document.getElementById("found");
  const told = document.getElementById("told");
  const { root } = list.dataset;
  const shown = 12;
  const index = new MiniSearch({
    fields: ["mark", "text", "code"],
    storeFields: ["mark", "text", "to", "cards"],
    tokenize: (words) =>
      words
        .toLowerCase()
        .split(/[\s,;:()–/]+/)
        .filter(Boolean),
    searchOptions: {
      prefix: true,
      fuzzy: (term) => (/\d/.test(term) ? false : 0.2),
      boost: { mark: 3 },
      combineWith: "AND",
    },
  });
  const link = ({ text, to, label }) => {
    const made = document.createElement("a");
    made.href = `${root}${to}`;
    made.textContent = text;
    if (label) {
      made.className = "print";
      made.setAttribute("aria-label", label);
    }
    return made;
  };
  const item = ({ mark, text, to, cards }) => {
    const made = document.createElement("li");
    made.append(link({ text: mark ? `${mark}: ${text}` : text, to }));
    for (const { title, prints } of cards) {
      const line = document.createElement("p");
      line.append(`${title} `, ...prints.map(link));
      made.append(line);
    }
    return made;
  };
  const show = () => {
    const found = index.search(field.value);
    list.replaceChildren(...found.slice(0, shown).map(item));
    if (field.value.trim() === "") told.textContent = "";
    else if (found.length === 0) told.textContent = "Nothing found. Marks A–Z lists every mark.";
    else if (found.length > shown)
      told.textContent = `The first ${shown} of ${found.length} found.`;
    else told.textContent = `${found.length} found.`;
  };
  index.addAll(window.TRAYLEAF_INDEX.map((entry, id) => ({ id, ...entry })));
  field.closest("[hidden]").hidden = false;
  field.addEventListener("input", show);
  field.addEventListener("keydown", ({ key }) => {
    const first = list.querySelector("a");
    if (key === "Enter" && first) first.click();
  });
  if (field.value !== "") show();
})();

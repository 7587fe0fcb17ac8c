(() => {
  const field = document.getElementById("search");
  const list = document.getElementById("found");
  const entries = window.TRAYLEAF_INDEX;
  const index = new MiniSearch({
    fields: ["mark", "text"],
    storeFields: ["mark", "text", "to"],
    tokenize: (words) =>
      words
        .toLowerCase()
        .split(/[\s,;()–/]+/)
        .filter(Boolean),
    searchOptions: {
      prefix: true,
      fuzzy: (term) => (/\d/.test(term) ? false : 0.2),
      boost: { mark: 3 },
      combineWith: "AND",
    },
  });
  index.addAll(entries.map((entry, id) => ({ id, ...entry })));
  field.parentElement.hidden = false;
  field.addEventListener("input", () => {
    list.replaceChildren(
      ...index
        .search(field.value)
        .slice(0, 20)
        .map(({ mark, text, to }) => {
          const link = document.createElement("a");
          link.href = `../${to}`;
          link.textContent = mark ? `${mark}: ${text}` : text;
          const item = document.createElement("li");
          item.append(link);
          return item;
        }),
    );
  });
})();

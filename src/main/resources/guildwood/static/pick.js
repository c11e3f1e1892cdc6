// Narrows the picking list while one types, so that ticks are not lost; without it the search asks the server.
(() => {
  const search = document.getElementById("q");
  const items = [...document.querySelectorAll("#pick li")];
  if (!search || items.length === 0) return;
  search.addEventListener("input", () => {
    const words = search.value.toLowerCase().split(/\s+/).filter(Boolean);
    for (const item of items) {
      const text = item.textContent.toLowerCase();
      item.hidden = !item.querySelector("input").checked && !words.every((word) => text.includes(word));
    }
    for (const group of document.querySelectorAll("#pick fieldset")) {
      group.hidden = [...group.querySelectorAll("li")].every((item) => item.hidden);
    }
  });
})();

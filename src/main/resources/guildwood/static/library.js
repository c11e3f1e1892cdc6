// The facets stand open beside the table. On a narrow screen they would push the table out of sight, so the
// drawer around them starts closed there; phones that say so get it closed from the server already.
(() => {
  const close = () => {
    const drawer = document.querySelector(".drawer");
    if (drawer && matchMedia("(max-width: 60rem)").matches) {
      drawer.open = false;
    }
  };
  close();
  document.addEventListener("htmx:afterSwap", (event) => {
    if (event.detail.target.id === "library") {
      close();
    }
  });
})();

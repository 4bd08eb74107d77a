// Over http(s): asks the browser to keep these pages for when there is no network. From a folder or a stick
// there is nothing to do. The worker’s address comes from the page: it lies at the top of its language.
(() => {
  "use strict";
  const { worker } = document.currentScript.dataset;
  if (!("serviceWorker" in navigator) || !location.protocol.startsWith("http")) return;
  const loaded = () => [location.href, ...performance.getEntriesByType("resource").map((entry) => entry.name)];
  async function register() {
    await navigator.serviceWorker.register(worker);
    const { active } = await navigator.serviceWorker.ready;
    active.postMessage({ keep: loaded() });
  }
  // A browser that may not keep anything shows the pages all the same.
  addEventListener("load", () => register().catch(() => {}));
})();

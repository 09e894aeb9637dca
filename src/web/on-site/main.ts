import { isOtherMachine } from "./is-other-machine";

const registered = async (): Promise<void> => {
  const registration = await navigator.serviceWorker.register("worker.js", { updateViaCache: "none" });
  // A browser may leave it for later to look for a newer build.
  await registration.update();
  // Its worker is ready once it keeps all that the page is made of.
  await navigator.serviceWorker.ready;
  document.documentElement.dataset["kept"] = "yes";
};

// After the page has what it needs, so that nothing is fetched twice. Where there is no signal or no worker, the sheet opens all the same.
if (isOtherMachine(location) && "serviceWorker" in navigator) addEventListener("load", () => void registered().catch(() => undefined));

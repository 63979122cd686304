"use strict";

// Has this browser subscribe, and shows the line that a setup needs for it. All sentences stand in the page.
(() => {
  const page = document.getElementById("phone");
  if (!page) {
    return;
  }
  const part = name => document.getElementById(name);

  const show = state => {
    page.querySelectorAll("[data-when]").forEach(one => {
      one.hidden = !one.dataset.when.split(" ").includes(state);
    });
  };

  const bytes = base64url =>
    Uint8Array.from(atob(base64url.replace(/-/g, "+").replace(/_/g, "/")), one => one.charCodeAt(0));

  const same = (one, other) => one && new Uint8Array(one).join() === other.join();

  const able = () => "serviceWorker" in navigator && "PushManager" in window && "Notification" in window;

  const done = ({ endpoint, keys }) => {
    const address = [endpoint, keys.p256dh, keys.auth].join("|");
    // JSON, which is YAML as well: it fits a setup in either.
    part("line").value = `{"channel": "push", "address": ${JSON.stringify(address)}}`;
    if (part("address")) {
      part("address").value = address;
    }
    show("done");
    part("done").focus();
  };

  const subscription = async () => {
    await navigator.serviceWorker.register(new URL("phone-worker.js", location), { scope: new URL("phone", location).pathname });
    const worker = await navigator.serviceWorker.ready;
    const key = bytes(page.dataset.key);
    const before = await worker.pushManager.getSubscription();
    // One that was made with another key of the gateway works no more, and is in the way of a new one.
    if (before && !same(before.options.applicationServerKey, key)) {
      await before.unsubscribe();
    }
    return worker.pushManager.subscribe({ userVisibleOnly: true, applicationServerKey: key });
  };

  const subscribe = async () => {
    show("asking");
    try {
      const answer = await Notification.requestPermission();
      if (answer === "granted") {
        done((await subscription()).toJSON());
      } else {
        show(answer === "denied" ? "refused" : "ready");
      }
    } catch (trouble) {
      part("reason").textContent = trouble.message;
      show("failed");
    }
  };

  const copy = async () => {
    part("line").select();
    // Where this is not allowed the line is selected all the same.
    await navigator.clipboard.writeText(part("line").value);
    part("copied").hidden = false;
  };

  part("subscribe").addEventListener("click", subscribe);
  part("copy").addEventListener("click", copy);
  if (!window.isSecureContext) {
    show("insecure");
  } else if (!able()) {
    show("unable");
  } else {
    show(Notification.permission === "denied" ? "refused" : "ready");
  }
})();

"use strict";

// Shows what the gateway pushes to this browser, also while no page is open. A tap opens the link that is in it.

const LINK = /https?:\/\/\S+\/a\/[\w-]+/;

const read = data => {
  try {
    return data.json();
  } catch (unreadable) {
    return {};
  }
};

self.addEventListener("push", event => {
  const note = read(event.data);
  const text = note.text || "";
  event.waitUntil(
    self.registration.showNotification("Yardlight", {
      body: text,
      // The same note again takes the place of the one before, and rings again.
      tag: note.id || "yardlight",
      renotify: true,
      requireInteraction: true,
      timestamp: Date.parse(note.at) || Date.now(),
      data: { link: (text.match(LINK) || [new URL(".", self.location).href])[0] },
    })
  );
});

self.addEventListener("notificationclick", event => {
  event.notification.close();
  event.waitUntil(self.clients.openWindow(event.notification.data.link));
});

// A newer worker takes over at once: this one keeps nothing.
self.addEventListener("install", () => self.skipWaiting());

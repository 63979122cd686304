"use strict";

// Adds a passkey on its owner's page, and signs in by one on the sign-in page. What is asked for and what comes back is
// binary (W3C Web Authentication, level 3); between here and the gateway it travels as Base64url.

(() => {
  const able = Boolean(window.PublicKeyCredential && navigator.credentials);
  const show = (id, on) => {
    const element = document.getElementById(id);
    if (element) {
      element.hidden = !on;
    }
  };

  const bytes = text => Uint8Array.from(atob(text.replace(/-/g, "+").replace(/_/g, "/")), one => one.charCodeAt(0));
  const letters = buffer => btoa(String.fromCharCode(...new Uint8Array(buffer)))
    .replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");

  const post = async (address, body) => {
    const token = document.querySelector("input[name=_csrf]");
    const answer = await fetch(address, {
      method: "POST",
      credentials: "same-origin",
      headers: {"Content-Type": "application/json", "X-XSRF-TOKEN": token ? token.value : ""},
      body: body === undefined ? undefined : JSON.stringify(body),
    });
    if (!answer.ok) {
      throw new Error("answered with " + answer.status);
    }
    return answer.json();
  };

  const known = list => (list || []).map(one => ({...one, id: bytes(one.id)}));

  const add = async label => {
    const asked = await post("/webauthn/register/options");
    const made = await navigator.credentials.create({
      publicKey: {
        ...asked,
        challenge: bytes(asked.challenge),
        user: {...asked.user, id: bytes(asked.user.id)},
        excludeCredentials: known(asked.excludeCredentials),
      },
    });
    await post("/webauthn/register", {
      publicKey: {
        credential: {
          id: made.id,
          rawId: letters(made.rawId),
          response: {
            attestationObject: letters(made.response.attestationObject),
            clientDataJSON: letters(made.response.clientDataJSON),
            transports: made.response.getTransports ? made.response.getTransports() : [],
          },
          type: made.type,
          clientExtensionResults: made.getClientExtensionResults(),
          authenticatorAttachment: made.authenticatorAttachment,
        },
        label,
      },
    });
  };

  const signIn = async () => {
    const asked = await post("/webauthn/authenticate/options");
    const shown = await navigator.credentials.get({
      publicKey: {...asked, challenge: bytes(asked.challenge), allowCredentials: known(asked.allowCredentials)},
    });
    const answer = await post("/login/webauthn", {
      id: shown.id,
      rawId: letters(shown.rawId),
      response: {
        authenticatorData: letters(shown.response.authenticatorData),
        clientDataJSON: letters(shown.response.clientDataJSON),
        signature: letters(shown.response.signature),
        userHandle: shown.response.userHandle ? letters(shown.response.userHandle) : undefined,
      },
      credType: shown.type,
      clientExtensionResults: shown.getClientExtensionResults(),
      authenticatorAttachment: shown.authenticatorAttachment,
    });
    return answer;
  };

  const attempt = work => {
    show("passkey-failed", false);
    work().catch(() => show("passkey-failed", true));
  };

  const form = document.getElementById("passkey-add");
  if (form) {
    show("passkey-unable", !able);
    form.hidden = !able;
    form.addEventListener("submit", event => {
      event.preventDefault();
      attempt(async () => {
        await add(form.elements.label.value.trim());
        window.location.reload();
      });
    });
  }

  const button = document.getElementById("passkey");
  if (button && able) {
    show("passkey-in", true);
    button.addEventListener("click", () => attempt(async () => {
      await signIn();
      window.location.assign("/");
    }));
  }
})();

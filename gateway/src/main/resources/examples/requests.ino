// For an ESP32, which has mbed TLS and Preferences on board.
#include <WiFi.h>
#include <HTTPClient.h>
#include <Preferences.h>
#include <mbedtls/base64.h>
#include <mbedtls/md.h>
@secure@
const char* URL = "@address@/api/v1";
const char* BOX = "@box@";
const char* KEY = "@key@";

Preferences kept;
String said;  // what the gateway has still to hear

bool stopSite() {
  return false;  // stop the site here; true once it has stopped
}

int post(const String& path, const String& body, String& heard) {
  @client@
  HTTPClient http;
  http.begin(client, String(URL) + path);
  http.addHeader("Authorization", String("Bearer ") + KEY);
  http.addHeader("Content-Type", "application/json");
  int status = http.POST(body);
  heard = status > 0 ? http.getString() : String("");
  http.end();
  return status;
}

// The text of a member; there is one request at a time.
String part(const String& heard, const String& name) {
  int at = heard.indexOf("\"" + name + "\"");
  int from = at < 0 ? -1 : heard.indexOf("\"", at + name.length() + 2);
  int to = from < 0 ? -1 : heard.indexOf("\"", from + 1);
  return to < 0 ? String("") : heard.substring(from + 1, to);
}

bool isRight(const String& id, const String& ask, const String& expires, const String& signature) {
  const mbedtls_md_info_t* sha256 = mbedtls_md_info_from_type(MBEDTLS_MD_SHA256);
  unsigned char secret[32], mac[32], text[64];
  size_t length = 0;
  String lines = String("yardlight-request\n") + BOX + "\n" + id + "\n" + ask + "\n" + expires;
  mbedtls_md(sha256, (const unsigned char*) KEY, strlen(KEY), secret);
  mbedtls_md_hmac(sha256, secret, 32, (const unsigned char*) lines.c_str(), lines.length(), mac);
  mbedtls_base64_encode(text, sizeof text, &length, mac, 32);
  return signature == String((const char*) text) && ask == "shut-in";
}

long seconds(const String& at) {  // of the day
  return at.substring(11, 13).toInt() * 3600 + at.substring(14, 16).toInt() * 60 + at.substring(17, 19).toInt();
}

long left(const String& received, const String& expires) {  // seconds; nothing lives longer than two hours
  long span = (seconds(expires) - seconds(received) + 86400) % 86400;
  return received.substring(0, 19) < expires.substring(0, 19) && span <= 7200 ? span : 0;
}

// Does what is asked, once and in time; then there is something to be said of it.
void look(const String& heard, unsigned long started) {
  String id = part(heard, "id"), expires = part(heard, "expires");
  if (id.length() == 0 || !isRight(id, part(heard, "ask"), expires, part(heard, "signature"))) return;
  String ids = kept.getString("ids", "");
  bool known = ids.indexOf(" " + id + " ") >= 0;
  bool inTime = (millis() - started) / 1000 < (unsigned long) left(part(heard, "received"), expires);
  if (!known && inTime) {
    ids = ids.substring(ids.length() > 800 ? ids.length() - 800 : 0) + " " + id + " ";
    kept.putString("ids", ids);
    kept.putString("last", "");
    kept.putString("last", id + (stopSite() ? " @done@" : " @refused@"));
  }
  String last = kept.getString("last", "");
  if (last.indexOf(id + " ") == 0) {
    said = "{\"point\": \"@point@\", \"condition\": \"" + last.substring(id.length() + 1) +
           "\", \"state\": \"active\", \"request\": \"" + id + "\"}";
  }
}

void setup() {
  Serial.begin(115200);
  kept.begin("requests", false);
  WiFi.begin("NETWORK", "PASSWORD");
}

void loop() {
  if (WiFi.status() == WL_CONNECTED) {
    String heard, ignored;
    unsigned long started = millis();
    if (post("/heartbeats", "{}", heard) == 202) look(heard, started);
    if (said.length() > 0 && post("/events", said, ignored) == 202) said = "";
  }
  delay(60000);
}

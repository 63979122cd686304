#if defined(ESP8266)
#include <ESP8266WiFi.h>
#include <ESP8266HTTPClient.h>
#else
#include <WiFi.h>
#include <HTTPClient.h>
#endif
@secure@
const char* URL = "@address@/api/v1/heartbeats";
const char* KEY = "@key@";

void setup() {
  Serial.begin(115200);
  WiFi.begin("NETWORK", "PASSWORD");
}

void loop() {
  if (WiFi.status() == WL_CONNECTED) {
    @client@
    HTTPClient http;
    http.begin(client, URL);
    http.addHeader("Authorization", String("Bearer ") + KEY);
    http.addHeader("Content-Type", "application/json");
    int status = http.POST("{\"uptime\": " + String(millis() / 1000) + "}");
    Serial.println(status > 0 ? http.getString() : http.errorToString(status));
    http.end();
  }
  delay(60000);
}

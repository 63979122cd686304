#if defined(ESP8266)
#include <ESP8266WiFi.h>
#include <ESP8266HTTPClient.h>
#else
#include <WiFi.h>
#include <HTTPClient.h>
#endif
@secure@
const char* URL = "@address@/api/v1/readings";
const char* KEY = "@key@";

float level() {
  return 12.4;  // what the sensor says, in ft
}

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
    int status = http.POST("{\"point\": \"water-tank\", \"value\": " + String(level(), 2) + ", \"unit\": \"ft\"}");
    Serial.println(status > 0 ? http.getString() : http.errorToString(status));
    http.end();
  }
  delay(60000);
}

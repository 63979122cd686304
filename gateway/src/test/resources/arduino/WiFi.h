#pragma once
#include "Arduino.h"

enum { WL_CONNECTED = 3 };
struct Network {
  void begin(const char*, const char*) {}
  int status() { return WL_CONNECTED; }
};
extern Network WiFi;

class WiFiClient {};

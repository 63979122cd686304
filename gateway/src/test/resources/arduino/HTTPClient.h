// Answers a heartbeat with what is in the file answer.json, takes everything else, and writes down what was posted.
#pragma once
#include "WiFi.h"

class HTTPClient {
  String address;

 public:
  bool begin(WiFiClient&, const String& url) {
    address = url;
    return true;
  }
  void addHeader(const String&, const String&) {}
  int POST(const String& body) {
    std::ofstream("posted.txt", std::ios::app) << address.c_str() << " " << body.c_str() << "\n";
    return 202;
  }
  String getString() {
    if (address.indexOf("/heartbeats") < 0) return "";
    std::ifstream in("answer.json");
    std::stringstream all;
    all << in.rdbuf();
    return String(all.str().c_str());
  }
  static String errorToString(int) { return "trouble"; }
  void end() {}
};

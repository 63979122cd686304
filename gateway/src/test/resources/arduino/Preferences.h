// Keeps each text in a file, as the board does where a power cut leaves it.
#pragma once
#include "Arduino.h"

class Preferences {
 public:
  bool begin(const char*, bool) { return true; }
  String getString(const char* key, const String& otherwise) {
    std::ifstream in(std::string("kept-") + key);
    if (!in) return otherwise;
    std::stringstream all;
    all << in.rdbuf();
    return String(all.str().c_str());
  }
  size_t putString(const char* key, const String& text) {
    std::ofstream(std::string("kept-") + key) << text.c_str();
    return text.length();
  }
};

// As much of a board as the examples use, for a compiler on a computer. Which names there are and what they take is from
// memory of the boards' libraries; that these are the same there is not shown by a program that compiles here.
#pragma once
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <iostream>
#include <sstream>
#include <string>

class String {
  std::string s;

 public:
  String(const char* text = "") : s(text) {}
  explicit String(unsigned long number) : s(std::to_string(number)) {}
  explicit String(float number, unsigned int digits = 2) {
    std::ostringstream out;
    out.setf(std::ios::fixed);
    out.precision(digits);
    out << number;
    s = out.str();
  }
  const char* c_str() const { return s.c_str(); }
  unsigned int length() const { return s.size(); }
  int indexOf(const String& text, unsigned int from = 0) const {
    size_t at = s.find(text.s, from);
    return at == std::string::npos ? -1 : (int) at;
  }
  String substring(unsigned int from) const { return substring(from, s.size()); }
  String substring(unsigned int from, unsigned int to) const {
    if (from >= s.size() || to <= from) return "";
    return String(s.substr(from, to - from).c_str());
  }
  long toInt() const { return atol(s.c_str()); }
  String operator+(const String& more) const { return String((s + more.s).c_str()); }
  String operator+(const char* more) const { return String((s + more).c_str()); }
  bool operator==(const String& other) const { return s == other.s; }
  bool operator==(const char* other) const { return s == other; }
  bool operator<(const String& other) const { return s < other.s; }
};

inline String operator+(const char* text, const String& more) { return String(text) + more; }

struct SerialPort {
  void begin(long) {}
  void println(const String& text) { std::cerr << text.c_str() << "\n"; }
};
extern SerialPort Serial;

unsigned long millis();
void delay(unsigned long ms);

// The board itself: goes through setup and loop once.
#include <cstdint>
#include <vector>

#include "WiFi.h"
#include "mbedtls/base64.h"
#include "mbedtls/md.h"

SerialPort Serial;
Network WiFi;

unsigned long millis() { return 1000; }
void delay(unsigned long) {}

void setup();
void loop();

int main() {
  setup();
  loop();
}

// The first 32 bits of the broken parts of the square and cube roots of the first primes, worked out.
static uint32_t rootOfPrime(int index, bool cube) {
  int prime = 1;
  for (int found = -1; found < index;) {
    bool whole = false;
    prime++;
    for (int by = 2; by * by <= prime; by++) whole = whole || prime % by == 0;
    if (!whole) found++;
  }
  // The largest whole r with r^2 <= p * 2^64, or r^3 <= p * 2^96; its last 32 bits.
  unsigned __int128 low = 0, high = (unsigned __int128) 1 << 37;
  while (high - low > 1) {
    unsigned __int128 half = (low + high) / 2;
    bool small = cube ? half * half <= (((unsigned __int128) prime << 96) / half)
                      : half * half <= ((unsigned __int128) prime << 64);
    (small ? low : high) = half;
  }
  return (uint32_t) low;
}

static uint32_t turned(uint32_t x, int by) { return x >> by | x << (32 - by); }

static std::vector<unsigned char> sha256(std::vector<unsigned char> text) {
  uint64_t bits = text.size() * 8;
  text.push_back(0x80);
  while (text.size() % 64 != 56) text.push_back(0);
  for (int i = 7; i >= 0; i--) text.push_back(bits >> (8 * i));
  uint32_t h[8], k[64];
  for (int i = 0; i < 8; i++) h[i] = rootOfPrime(i, false);
  for (int i = 0; i < 64; i++) k[i] = rootOfPrime(i, true);
  for (size_t at = 0; at < text.size(); at += 64) {
    uint32_t w[64], v[8];
    for (int i = 0; i < 16; i++) {
      const unsigned char* four = &text[at + 4 * i];
      w[i] = (uint32_t) four[0] << 24 | four[1] << 16 | four[2] << 8 | four[3];
    }
    for (int i = 16; i < 64; i++) {
      uint32_t a = turned(w[i - 15], 7) ^ turned(w[i - 15], 18) ^ w[i - 15] >> 3;
      uint32_t b = turned(w[i - 2], 17) ^ turned(w[i - 2], 19) ^ w[i - 2] >> 10;
      w[i] = w[i - 16] + a + w[i - 7] + b;
    }
    for (int i = 0; i < 8; i++) v[i] = h[i];
    for (int i = 0; i < 64; i++) {
      uint32_t e = turned(v[4], 6) ^ turned(v[4], 11) ^ turned(v[4], 25);
      uint32_t one = v[7] + e + ((v[4] & v[5]) ^ (~v[4] & v[6])) + k[i] + w[i];
      uint32_t a = turned(v[0], 2) ^ turned(v[0], 13) ^ turned(v[0], 22);
      uint32_t two = a + ((v[0] & v[1]) ^ (v[0] & v[2]) ^ (v[1] & v[2]));
      for (int j = 7; j > 0; j--) v[j] = v[j - 1];
      v[4] += one;
      v[0] = one + two;
    }
    for (int i = 0; i < 8; i++) h[i] += v[i];
  }
  std::vector<unsigned char> out;
  for (uint32_t word : h) {
    for (int i = 3; i >= 0; i--) out.push_back(word >> (8 * i));
  }
  return out;
}

const mbedtls_md_info_t* mbedtls_md_info_from_type(mbedtls_md_type_t) {
  static mbedtls_md_info_t only;
  return &only;
}

static int given(const std::vector<unsigned char>& hash, unsigned char* output) {
  std::copy(hash.begin(), hash.end(), output);
  return 0;
}

int mbedtls_md(const mbedtls_md_info_t*, const unsigned char* input, size_t length, unsigned char* output) {
  return given(sha256({input, input + length}), output);
}

int mbedtls_md_hmac(const mbedtls_md_info_t*, const unsigned char* key, size_t keyLength, const unsigned char* input,
                    size_t length, unsigned char* output) {
  std::vector<unsigned char> inner(64, 0x36), outer(64, 0x5C);
  for (size_t i = 0; i < keyLength; i++) {
    inner[i] ^= key[i];
    outer[i] ^= key[i];
  }
  inner.insert(inner.end(), input, input + length);
  auto hash = sha256(inner);
  outer.insert(outer.end(), hash.begin(), hash.end());
  return given(sha256(outer), output);
}

int mbedtls_base64_encode(unsigned char* out, size_t room, size_t* written, const unsigned char* in, size_t length) {
  static const char* letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  std::string text;
  for (size_t i = 0; i < length; i += 3) {
    uint32_t three = in[i] << 16 | (i + 1 < length ? in[i + 1] << 8 : 0) | (i + 2 < length ? in[i + 2] : 0);
    for (int j = 0; j < 4; j++) text += i + j > length ? '=' : letters[three >> (18 - 6 * j) & 63];
  }
  if (text.size() + 1 > room) return -1;
  memcpy(out, text.c_str(), text.size() + 1);
  *written = text.size();
  return 0;
}

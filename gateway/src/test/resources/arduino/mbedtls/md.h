// SHA-256 as in FIPS 180-4 and HMAC as in RFC 2104, under the names of mbed TLS.
#pragma once
#include <cstddef>

struct mbedtls_md_info_t {};
enum mbedtls_md_type_t { MBEDTLS_MD_SHA256 };
const mbedtls_md_info_t* mbedtls_md_info_from_type(mbedtls_md_type_t);
int mbedtls_md(const mbedtls_md_info_t*, const unsigned char* input, size_t length, unsigned char* output);
int mbedtls_md_hmac(const mbedtls_md_info_t*, const unsigned char* key, size_t keyLength, const unsigned char* input,
                    size_t length, unsigned char* output);

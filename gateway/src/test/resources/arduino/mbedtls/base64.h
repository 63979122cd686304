#pragma once
#include <cstddef>

int mbedtls_base64_encode(unsigned char* out, size_t room, size_t* written, const unsigned char* in, size_t length);

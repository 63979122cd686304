#include "HTTPClient.h"

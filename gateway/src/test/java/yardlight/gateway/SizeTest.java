package yardlight.gateway;

import yardlight.escalation.SizeContract;

class SizeTest extends SizeContract {}

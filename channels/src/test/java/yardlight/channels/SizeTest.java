package yardlight.channels;

import yardlight.escalation.SizeContract;

class SizeTest extends SizeContract {}

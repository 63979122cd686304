package yardlight.demo;

import yardlight.escalation.SizeContract;

class SizeTest extends SizeContract {}

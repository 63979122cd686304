package yardlight.escalation;

class SizeTest extends SizeContract {}

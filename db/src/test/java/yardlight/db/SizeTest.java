package yardlight.db;

import yardlight.escalation.SizeContract;

class SizeTest extends SizeContract {}

package yardlight.db.evidence;

import org.springframework.data.jpa.repository.JpaRepository;

interface SentHeadRows extends JpaRepository<SentHeadRow, String> {}

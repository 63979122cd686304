package yardlight.db.secret;

import org.springframework.data.jpa.repository.JpaRepository;

interface SecretRows extends JpaRepository<SecretRow, String> {}

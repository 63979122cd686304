package yardlight.db.person;

import org.springframework.data.jpa.repository.JpaRepository;

interface PersonRows extends JpaRepository<PersonRow, String> {}

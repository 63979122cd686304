package yardlight.db;

import org.hibernate.boot.registry.StandardServiceRegistryBuilder;
import org.hibernate.bytecode.internal.none.BytecodeProviderImpl;
import org.hibernate.bytecode.spi.BytecodeProvider;
import org.hibernate.service.spi.ServiceContributor;

/**
 * Tells Hibernate not to write classes at the start: the entities here have nothing that is fetched late, and are few and
 * seldom read. That spares 900 classes, some 8 MB and a third of a second; see docs/decisions/small.md.
 */
public final class PlainEntities implements ServiceContributor {

    @Override
    public void contribute(StandardServiceRegistryBuilder builder) {
        builder.addService(BytecodeProvider.class, new BytecodeProviderImpl());
    }
}

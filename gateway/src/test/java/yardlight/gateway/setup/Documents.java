package yardlight.gateway.setup;

/** Setup documents for tests. */
public final class Documents {

    /** The one that the contract shows, with a second contact so that its names lead somewhere. */
    public static final String CONTRACT = """
            sites:    [{id: mesa-9, name: Mesa 9, zone: America/Chicago, ladder: night}]
            boxes:    [{id: mesa-9-box, site: mesa-9, feed: wells, link: hub, battery: true, heartbeat: {every: PT1M, grace: PT2M}}]
            points:   [{id: water-tank, site: mesa-9, name: WATER TANK, unit: ft, priority: high, onDelay: PT0S, offDelay: PT0S, latching: false}]
            contacts:
              - id: ana
                name: Ana Ruelas
                zone: America/Chicago
                language: en                     # en or es
                lines: [{channel: sms-mail, address: 5755550101@txt.example}, {channel: mail, address: ana@mesa.example}]
                quiet: [{from: "21:00", to: "06:00", lets: high}]   # the lowest priority that still gets through
                textsPerHour: 20
              - {id: ben, name: Ben Tully, lines: [{channel: sms-mail, address: 5755550102@txt.example}]}
            rosters:  [{id: crew, zone: America/Chicago, start: "2026-11-23T07:00", tour: P7D, order: [ana, ben],
                        reliefs: [{from: "2026-12-24T07:00", to: "2026-12-26T07:00", contact: ben}]}]
            ladders:
              - id: night
                endsWhen: acknowledged           # or normal: also ends when the alarm returns to normal
                rungs:
                  - {call: [ana], wait: PT5M, rounds: 2}
                  - {call: ["roster:crew"], wait: PT5M}
                  - {call: [everyone], wait: PT15M, rounds: 3}
                again: 1                         # climbs of the whole ladder after the first, before it is exhausted
            """;

    /** A mistake of every kind, each in a place of its own. */
    public static final String WRONG_ALL_OVER = """
            sites:
              - {id: mesa-9, zone: America/Chikago, ladder: night}
              - {id: mesa-9, zone: America/Chicago, ladder: nite}
            boxes:
              - {id: box, site: mesa-10, heartbeat: {every: one minute}}
            points:
              - {id: water-tank, site: mesa-9, onDelay: -PT1S, colour: blue}
            contacts:
              - id: ana
                zone: America/Chicago
                lines: [{channel: pigeon, address: coop 4}, {channel: mail, address: not an address}]
                quiet: [{from: "21:00", to: "21:00"}]
                qiuet: [{from: "21:00", to: "06:00"}]
              - {id: ben, zone: Mars/Base, lines: []}
            rosters:
              - id: crew
                zone: America/Chicago
                start: "2026-11-23T07:00"
                tour: P0D
                order: [cleo]
                reliefs: [{from: "2026-12-26T07:00", to: "2026-12-24T07:00", contact: ben}]
            ladders:
              - {id: night, rungs: []}
              - id: day
                rungs: [{call: [dora]}, {call: [ana], wait: PT0S}]
                again: many
            people: []
            """;

    private Documents() {}
}

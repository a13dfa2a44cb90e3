using LiveHeat.Browser.Halls;

namespace LiveHeat.Browser.Floor;

/// <summary>The clock that pad and board share. Where a number is published, its source stands beside it.</summary>
[Collection(OneAtATime.Name)]
public sealed class ClockTests(Hall hall) : ModuleTest(hall)
{
    private static readonly string[] Clock = ["/floor/clock.js"];

    /// <summary>A phone whose clocks a test moves, and a server that runs 40 ppm faster and a million milliseconds ahead.</summary>
    private const string APhone = """
        const phone = { mono: 1_000, wall: 5_000_000, kept: null };
        const server = mono => mono * 1.00004 + 1e6;
        const pass = ms => { phone.mono += ms; phone.wall += ms; };
        const newClock = (bridge = null) => new clock.Clock({ mono: () => phone.mono, wall: () => phone.wall, bridge, onBridge: kept => { phone.kept = kept; } });
        const exchange = (it, delay, slept = 0) => {
          const t1 = phone.mono;
          pass(delay / 2);
          const at = server(phone.mono) + slept;
          pass(delay / 2);
          it.add({ t1, received: at, sent: at, t4: phone.mono, process: 'p', rate: 1 });
        };
        """;

    // RFC 5905 section 8: offset ((T2-T1)+(T3-T4))/2, delay (T4-T1)-(T3-T2). The first exchange is a public worked example of these
    // formulas (T1 0.410634, T2 0.415284, T3 0.415471, T4 0.430596: offset -0.0052375, delay 0.019775 s); the second is computed.
    [Theory]
    [InlineData(410.634, 415.284, 415.471, 430.596, -5.2375, 19.775)]
    [InlineData(0, 110, 111, 21, 100, 20)]
    public async Task Offset_and_delay_are_those_of_the_four_timestamps(double t1, double t2, double t3, double t4, double offset, double delay)
    {
        var sample = await Run<double[]>(Clock, "([clock], [t1, t2, t3, t4]) => { const { offset, delay } = clock.sampleOf(t1, t2, t3, t4); return [offset, delay]; }", new[] { t1, t2, t3, t4 });

        Assert.Equal(offset, sample[0], 6);
        Assert.Equal(delay, sample[1], 6);
    }

    // RFC 5905 section 8: 100 ppm over 64 s would give an apparent delay of -6.4 ms; a delay is never below zero.
    [Fact]
    public async Task A_delay_is_never_below_zero() =>
        Assert.Equal(0, await Run<double>(Clock, "([clock]) => clock.sampleOf(0, 0, 64_006.4, 64_000).delay"));

    // RFC 5905 section 10: of the last eight samples the offset of the one with the least delay. The five pairs are computed from that rule.
    [Fact]
    public async Task Of_the_last_eight_exchanges_the_one_with_the_least_delay_counts()
    {
        var best = await Run<double[]>(Clock, """
            ([clock]) => {
              const samples = [[12.0, 80], [3.1, 31], [9.4, 64], [-1.0, 45], [3.9, 33]].map(([offset, delay], at) => ({ offset, delay, at }));
              const first = clock.bestOf(samples).offset;
              const later = [...samples, ...Array.from({ length: 7 }, (_, i) => ({ offset: 50 + i, delay: 40 + i, at: 5 + i }))];
              return [first, clock.bestOf(later).offset];
            }
            """);

        Assert.Equal([3.1, 3.9], best);   // the one of 31 ms is the eleventh from the end by then, the one of 33 ms the eighth
    }

    // RFC 5905 sections 7.2 and 9.2: dispersion grows by PHI = 15e-6 s a second, which is 1.296 s a day.
    [Fact]
    public async Task Dispersion_grows_by_fifteen_parts_in_a_million()
    {
        Assert.Equal(15, await Run<double>(Clock, "([clock]) => clock.MEASURED_PPM"));
        Assert.Equal(1_296, await Run<double>(Clock, "([clock]) => clock.dispersionMs(86_400_000, clock.MEASURED_PPM)"), 6);
    }

    // RFC 5905 section 4: the maximum error is half the delay and the dispersion.
    [Fact]
    public async Task The_uncertainty_is_half_the_delay_and_what_may_have_run_away_since()
    {
        var uncertainty = await Run<double[]>(Clock, $$"""
            ([clock]) => {
              {{APhone}}
              const it = newClock();
              exchange(it, 8);
              const fresh = it.uncertaintyMs();
              pass(10_000);
              return [fresh, it.uncertaintyMs() - fresh];
            }
            """);

        Assert.Equal(4, uncertainty[0], 6);
        Assert.Equal(1, uncertainty[1], 6);   // 100 ppm of 10 s, as long as the phone's own rate has not been measured
    }

    [Fact]
    public async Task A_clock_that_has_measured_its_own_rate_stays_within_what_it_says_through_ten_minutes_alone()
    {
        var told = await Run<double[]>(Clock, $$"""
            ([clock]) => {
              {{APhone}}
              const it = newClock();
              for (let i = 0; i < 8; i++) { exchange(it, 4 + i); pass(120); }
              const synchronised = it.now() - server(phone.mono);
              for (let i = 0; i < 200; i++) { pass(5_000); exchange(it, 4 + i % 3); }
              pass(600_000);
              return [synchronised, it.now() - server(phone.mono), it.uncertaintyMs()];
            }
            """);

        Assert.InRange(told[0], -0.2, 0.2);
        Assert.InRange(Math.Abs(told[1]), 0, told[2]);
        Assert.InRange(told[2], 0, 20);       // unmeasured, 40 ppm of ten minutes alone would be 24 ms
    }

    [Fact]
    public async Task After_a_sleep_and_after_a_reload_the_wall_clock_bridges_and_the_quality_is_poor_until_the_next_exchange()
    {
        var told = await Run<string[]>(Clock, $$"""
            ([clock]) => {
              {{APhone}}
              const it = newClock(), words = [it.quality().word];
              exchange(it, 4);
              words.push(it.quality().word);
              phone.wall += 60_000;                               // slept a minute: performance.now() stood still
              words.push(it.quality().word, String(Math.round(it.now() - server(phone.mono) - 60_000)));
              exchange(it, 4, 60_000);
              words.push(it.quality().word);
              const again = newClock(phone.kept);                 // a reload: another page, another performance.now()
              words.push(again.quality().word);
              return words;
            }
            """);

        Assert.Equal(["none", "good", "poor", "0", "good", "poor"], told);
    }

    [Fact]
    public async Task An_answer_asked_for_before_a_sleep_is_not_believed()
    {
        var off = await Run<double>(Clock, $$"""
            ([clock]) => {
              {{APhone}}
              const it = newClock();
              exchange(it, 4);
              const t1 = phone.mono;
              pass(2);
              const at = server(phone.mono);
              phone.wall += 60_000;
              it.now();                                           // the sleep is noticed
              pass(2);
              it.add({ t1, received: at, sent: at, t4: phone.mono, process: 'p', rate: 1 });
              return it.now() - server(phone.mono) - 60_000;
            }
            """);

        Assert.InRange(off, -100, 100);
    }

    [Fact]
    public async Task Another_process_of_the_server_is_another_timebase()
    {
        var off = await Run<double>(Clock, $$"""
            ([clock]) => {
              {{APhone}}
              const it = newClock();
              exchange(it, 4);
              const t1 = phone.mono;
              pass(40);                                           // a worse exchange than the one before, and still the only one that counts
              it.add({ t1, received: phone.mono + 7e6, sent: phone.mono + 7e6, t4: phone.mono, process: 'another', rate: 1 });
              return it.now() - phone.mono;
            }
            """);

        Assert.InRange(off, 7e6 - 100, 7e6 + 100);
    }

    [Fact]
    public async Task In_a_rehearsal_twenty_times_as_fast_the_time_to_GO_is_told_in_real_milliseconds()
    {
        var told = await Run<double[]>(Clock, """
            ([clock]) => {
              let mono = 100;
              const server = at => 7e11 + 20 * at;
              const it = new clock.Clock({ mono: () => mono, wall: () => 1e6 + mono });
              const t1 = mono;
              mono += 4;
              it.add({ t1, received: server(mono - 2), sent: server(mono - 2), t4: mono, process: 'q', rate: 20 });
              mono += 1_000;
              return [it.now() - server(mono), it.msUntil(it.now() + 2_000), it.instantOf(mono - 50) - server(mono - 50)];
            }
            """);

        Assert.Equal(0, told[0], 2);
        Assert.Equal(100, told[1], 2);
        Assert.Equal(0, told[2], 2);
    }
}

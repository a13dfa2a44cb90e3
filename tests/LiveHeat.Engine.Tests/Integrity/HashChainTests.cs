using System.Security.Cryptography;
using System.Text.Json.Nodes;
using CsCheck;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Integrity;

public class HashChainTests
{
    private const string Outbox = "Zm9vYmFyYmF6cXV4MTIzNA";

    [Fact]
    public void A_line_has_for_ever_the_hash_it_has_today()
    {
        // Computed outside: printf '%s' TEXT | sha256sum, with
        // {"body":"{\"fact\":\"step-done\"}","bodyHash":"b1","heat":"h1","id":"Zm9vYmFyYmF6cXV4MTIzNA.17","previousHash":"000...0","receivedAt":1795600841200,"sender":"s1","sequence":1}
        Assert.Equal(Golden, HashChain.Next(HashChain.Start, First));
    }

    [Fact]
    public void A_hash_is_the_SHA_256_of_the_canonical_JSON_of_the_line() =>
        Gen.Select(Text, Text, Text, Gen.Long[1, 1L << 53], Gen.Long[0, 1L << 53]).Sample((body, sender, previous, sequence, receivedAt) =>
        {
            var json = new JsonObject
            {
                ["heat"] = "h1",
                ["sequence"] = sequence,
                ["id"] = $"{Outbox}.17",
                ["sender"] = sender,
                ["receivedAt"] = receivedAt,
                ["bodyHash"] = "b1",
                ["body"] = body,
                ["previousHash"] = previous,
            };
            var entry = First with { Sequence = sequence, Sender = sender, Body = body, ReceivedAt = new Instant(receivedAt) };
            Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(CanonicalJson.Bytes(json))), HashChain.Next(previous, entry));
        });

    [Fact]
    public void An_untouched_chain_verifies()
    {
        Assert.Null(HashChain.Verify([]));
        Assert.Null(HashChain.Verify(Chain(1)));
        Assert.Null(HashChain.Verify(Chain(40)));
    }

    [Fact]
    public void Any_change_to_any_field_is_found_at_its_line() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[0, 11], Gen.Int[0, Changes.Length - 1]).Sample((count, at, change) =>
        {
            var lines = Chain(count);
            at %= count;
            lines[at] = Changes[change](lines[at]);
            Assert.Equal(at + 1, HashChain.Verify(lines));
        });

    [Fact]
    public void A_rewritten_line_is_found_at_the_next_one()
    {
        var lines = Chain(5);
        var entry = lines[2].Entry with { Body = "{\"fact\":\"no-rep\"}" };
        lines[2] = new ChainLink(entry, lines[2].PreviousHash, HashChain.Next(lines[2].PreviousHash, entry));
        Assert.Equal(4, HashChain.Verify(lines));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    public void A_missing_line_is_named(int missing)
    {
        var lines = Chain(5);
        lines.RemoveAt(missing);
        Assert.Equal(missing + 1, HashChain.Verify(lines));
    }

    [Fact]
    public void Two_lines_in_each_others_place_are_found()
    {
        var lines = Chain(5);
        (lines[1], lines[2]) = (lines[2], lines[1]);
        Assert.Equal(2, HashChain.Verify(lines));
    }

    [Fact]
    public void A_line_that_stands_twice_is_found()
    {
        var lines = Chain(3);
        lines.Insert(1, lines[0]);
        Assert.Equal(2, HashChain.Verify(lines));
    }

    [Fact]
    public void Lines_of_two_heats_are_no_chain()
    {
        var lines = Chain(2);
        var stranger = lines[1].Entry with { Heat = new HeatId("h2") };
        lines[1] = new ChainLink(stranger, lines[0].Hash, HashChain.Next(lines[0].Hash, stranger));
        Assert.Equal(2, HashChain.Verify(lines));
    }

    private static readonly ChainEntry First = new(
        new HeatId("h1"), 1, new FactId(Outbox, 17), "s1", new Instant(1795600841200), "b1", "{\"fact\":\"step-done\"}");

    private const string Golden = "f3f460367690c8c77c5980530405393674e27a31ccc1e4b74550481a23d1a111";

    private static readonly Func<ChainLink, ChainLink>[] Changes =
    [
        line => line with { Entry = line.Entry with { Heat = new HeatId("h9") } },
        line => line with { Entry = line.Entry with { Sequence = line.Entry.Sequence + 1 } },
        line => line with { Entry = line.Entry with { Id = new FactId(Outbox, 999) } },
        line => line with { Entry = line.Entry with { Id = new FactId("Zm9vYmFyYmF6cXV4MTIzNB", line.Entry.Id.Counter) } },
        line => line with { Entry = line.Entry with { Sender = "s2" } },
        line => line with { Entry = line.Entry with { ReceivedAt = line.Entry.ReceivedAt + 1 } },
        line => line with { Entry = line.Entry with { BodyHash = "b2" } },
        line => line with { Entry = line.Entry with { Body = line.Entry.Body + " " } },
        line => line with { PreviousHash = OtherEnd(line.PreviousHash) },
        line => line with { Hash = OtherEnd(line.Hash) },
    ];

    private static readonly Gen<string> Text = Gen.Char.Where(c => !char.IsSurrogate(c)).Array[0, 20].Select(chars => new string(chars));

    private static string OtherEnd(string hash) => hash[..^1] + (hash[^1] == 'a' ? 'b' : 'a');

    private static List<ChainLink> Chain(int count)
    {
        var lines = new List<ChainLink>();
        var previous = HashChain.Start;
        for (var i = 1; i <= count; i++)
        {
            var entry = First with { Sequence = i, Id = new FactId(Outbox, 16 + i), ReceivedAt = First.ReceivedAt + i };
            lines.Add(new ChainLink(entry, previous, HashChain.Next(previous, entry)));
            previous = lines[^1].Hash;
        }

        return lines;
    }
}

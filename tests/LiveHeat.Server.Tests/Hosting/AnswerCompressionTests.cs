using System.IO.Compression;
using LiveHeat.Contracts.Access;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Hosting;

public sealed class AnswerCompressionTests(SharedFloor shared) : FloorTest(shared)
{
    private static readonly (string, string) Small = ("Accept-Encoding", "gzip, deflate, br");

    [Theory]
    [InlineData("sheet", "br", "gzip, deflate, br")]
    [InlineData("frame", "br", "gzip, deflate, br")]
    [InlineData("sheet", "gzip", "gzip")]
    public async Task JSON_that_is_read_comes_at_most_half_as_long_and_as_it_is(string what, string encoding, string asked)
    {
        var heat = await Floor.Call(lanes: 4);
        var path = $"{heat.Path}/{what}";

        var small = await Floor.Visitor().Get(path, ("Accept-Encoding", asked));

        var packed = await small.Message.Content.ReadAsByteArrayAsync();
        using var unpacked = new StreamReader(encoding == "br"
            ? new BrotliStream(new MemoryStream(packed), CompressionMode.Decompress) : new GZipStream(new MemoryStream(packed), CompressionMode.Decompress));
        var plain = (await Floor.Visitor().Get(path)).Fine().Text;
        Assert.Equal((200, encoding), (small.Status, string.Join(", ", small.Message.Content.Headers.ContentEncoding)));
        Assert.Equal(plain, await unpacked.ReadToEndAsync());
        Assert.InRange(packed.Length, 1, plain.Length / 2);
    }

    [Theory]
    [InlineData("/api/live/current")]
    [InlineData("/api/library")]
    [InlineData("frame")]
    public async Task What_has_a_tag_differs_by_encoding_and_language_and_whoever_knows_the_tag_is_told_so_too(string what)
    {
        var heat = await Floor.Call();
        var path = what == "frame" ? $"{heat.Path}/frame" : what;

        var first = await Floor.Visitor().Get(path, Small);
        var again = await Floor.Visitor().Get(path, Small, ("If-None-Match", first.Message.Headers.ETag!.ToString()));
        var plain = await Floor.Visitor().Get(path, ("If-None-Match", first.Message.Headers.ETag!.ToString()));

        Assert.True(first.Message.Headers.ETag!.IsWeak);
        Assert.Equal((200, 304, 304), (first.Status, again.Status, plain.Status));
        Assert.All([first, again, plain], answer => Assert.Equal(["Accept-Encoding", "Accept-Language"], answer.Message.Headers.Vary.Order()));
    }

    /// <summary>A code that is told once, and a sentence that repeats what was sent.</summary>
    [Fact]
    public async Task What_is_answered_to_a_POST_and_a_problem_are_left_as_they_are()
    {
        var code = new StringContent("""{"role":"announcer"}""", System.Text.Encoding.UTF8, "application/json");

        var made = await Floor.Organiser.Send(HttpMethod.Post, "/api/codes", code, Small);
        var problem = await Floor.Visitor().Get("/api/heats/nothing/frame", Small);

        Assert.Equal(Role.Announcer, made.Fine().Read<CodeMade>().Role);
        Assert.Equal("no-such-heat", problem.Code);
        Assert.All([made, problem], answer => Assert.Empty(answer.Message.Content.Headers.ContentEncoding));
    }
}

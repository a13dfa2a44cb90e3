using System.Net.Http.Headers;
using LiveHeat.Engine.Heats;
using LiveHeat.Server.Access;
using LiveHeat.Server.Library;

namespace LiveHeat.Server.Setup;

/// <summary>Pictures of movements, through their addresses.</summary>
public sealed class PictureEndpointsTests
{
    private const string Path = "/api/setup/movements/gate-ball/picture";
    private static readonly byte[] Png = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 1, 2, 3];
    private static readonly byte[] Jpeg = [0xFF, 0xD8, 0xFF, 0xE0, 4, 5, 6];

    [Fact]
    public async Task A_picture_is_attached_and_anybody_sees_it_as_a_picture_and_nothing_else()
    {
        await using var host = await SmallHost.Start();
        var desk = await Desk(host);

        var address = (await Attach(desk, Png, "image/png")).Field("picture");

        Assert.NotNull(PictureAddress.KeyOf(address));
        var seen = await host.Browser().Get(address);
        Assert.Equal(200, seen.Status);
        Assert.Equal(Png, await seen.Response.Content.ReadAsByteArrayAsync());
        Assert.Equal("image/png", seen.Response.Content.Headers.ContentType!.ToString());
        Assert.Equal("nosniff", seen.Response.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.Equal("default-src 'none'; sandbox", seen.Response.Headers.GetValues("Content-Security-Policy").Single());
        Assert.Equal("public, max-age=31536000, immutable", seen.Response.Headers.CacheControl!.ToString());
        Assert.Equal("no-cache", (await host.Browser().Get(Path)).Response.Headers.CacheControl!.ToString());
    }

    [Fact]
    public async Task The_newest_picture_has_the_plain_address_and_an_older_one_keeps_its_own()
    {
        await using var host = await SmallHost.Start();
        var desk = await Desk(host);
        var first = (await Attach(desk, Png, "image/png")).Field("picture");

        var second = (await Attach(desk, Jpeg, "image/jpeg")).Field("picture");

        Assert.NotEqual(first, second);
        Assert.Equal(Png, await Bytes(host, first));
        Assert.Equal(Jpeg, await Bytes(host, second));
        Assert.Equal(Jpeg, await Bytes(host, Path));

        await desk.Delete("/api/setup/movements/gate-ball");
        Assert.Equal(Png, await Bytes(host, first));
        Assert.Equal("no-such-picture", (await host.Browser().Get(Path)).Code);
    }

    [Fact]
    public async Task A_picture_can_be_taken_off_and_put_back()
    {
        await using var host = await SmallHost.Start();
        var desk = await Desk(host);
        var with = await Attach(desk, Png, "image/png");

        await desk.PutText("/api/setup/movements/gate-ball", Movement);
        Assert.Equal("no-such-picture", (await host.Browser().Get(Path)).Code);

        Assert.Equal(200, (await desk.PutText("/api/setup/movements/gate-ball", with.Text)).Status);
        Assert.Equal(Png, await Bytes(host, Path));
    }

    [Fact]
    public async Task A_picture_that_is_known_already_is_not_sent_again()
    {
        await using var host = await SmallHost.Start();
        var desk = await Desk(host);
        await Attach(desk, Png, "image/png");
        var tag = (await host.Browser().Get(Path)).Response.Headers.ETag!.ToString();

        using var client = new HttpClient(host.Server.CreateHandler()) { BaseAddress = new Uri("http://hall.test") };
        client.DefaultRequestHeaders.IfNoneMatch.ParseAdd(tag);

        Assert.Equal(System.Net.HttpStatusCode.NotModified, (await client.GetAsync(new Uri(Path, UriKind.Relative))).StatusCode);
    }

    [Theory]
    [InlineData("<html>", "text/html")]
    [InlineData("<html>", "image/png")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\"/>", "image/svg+xml")]
    [InlineData("GIF89a", "image/gif")]
    [InlineData("{}", "application/json")]
    [InlineData("", "image/png")]
    public async Task What_is_no_picture_is_refused(string text, string type)
    {
        await using var host = await SmallHost.Start();
        var desk = await Desk(host);

        var answer = await Send(desk, System.Text.Encoding.UTF8.GetBytes(text), type);

        Assert.Equal((415, "not-a-picture"), (answer.Status, answer.Code));
        Assert.Equal("no-such-picture", (await host.Browser().Get(Path)).Code);
    }

    [Fact]
    public async Task A_picture_that_is_said_to_be_another_kind_is_refused()
    {
        await using var host = await SmallHost.Start();
        var desk = await Desk(host);

        Assert.Equal("not-a-picture", (await Send(desk, Png, "image/jpeg")).Code);
        Assert.Equal("not-a-picture", (await Send(desk, Png, "text/html")).Code);
    }

    [Theory]
    [InlineData(512 * 1024, 200)]
    [InlineData((512 * 1024) + 1, 413)]
    public async Task A_picture_has_at_most_512_kB(int bytes, int status)
    {
        await using var host = await SmallHost.Start();
        var desk = await Desk(host);
        byte[] large = [.. Png, .. new byte[bytes - Png.Length]];

        Assert.Equal(status, (await Send(desk, large, "image/png")).Status);
        // Nor when it does not say its length before it comes.
        using var stream = new MemoryStream(large);
        using var unsized = new StreamContent(new Unsized(stream));
        unsized.Headers.ContentType = new MediaTypeHeaderValue("image/png");
        Assert.Equal(status, (await desk.Send(HttpMethod.Put, Path, unsized)).Status);
    }

    [Fact]
    public async Task A_movement_that_is_not_there_gets_none()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.Organiser();

        Assert.Equal("no-such-movement", (await Send(desk, Png, "image/png")).Code);
        Assert.Equal("no-such-picture", (await desk.Get($"{Path}?v=0123456789abcdef0123456789abcdef")).Code);
    }

    [Theory]
    [InlineData(Role.HeadJudge)]
    [InlineData(Role.Judge)]
    [InlineData(Role.Announcer)]
    [InlineData(Role.Viewer)]
    public async Task Only_the_organiser_attaches_one(Role role)
    {
        await using var host = await SmallHost.Start();
        await Desk(host);
        var browser = role == Role.Viewer ? host.Browser() : await host.Joined(role, role == Role.Judge ? 1 : null);

        Assert.Equal(role == Role.Viewer ? "not-signed-in" : "not-yours", (await Send(browser, Png, "image/png")).Code);
        Assert.Equal("no-such-picture", (await host.Browser().Get(Path)).Code);
    }

    [Fact]
    public async Task A_foreign_page_attaches_none()
    {
        await using var host = await SmallHost.Start();
        var desk = await Desk(host);
        desk.Origin = "http://elsewhere.test";

        Assert.Equal("wrong-origin", (await Send(desk, Png, "image/png")).Code);
    }

    private const string Movement = """{"id":"gate-ball","name":"gate balls","unit":"reps","secondsPerUnit":2.4,"fastestSecondsPerUnit":1,"start":"","finish":"","source":""}""";

    private static async Task<Browser> Desk(SmallHost host)
    {
        var desk = await host.Organiser();
        var answer = await desk.PutText("/api/setup/movements/gate-ball", Movement);
        Assert.True(answer.Status == 200, answer.ToString());
        return desk;
    }

    private static async Task<Answer> Attach(Browser desk, byte[] bytes, string type)
    {
        var answer = await Send(desk, bytes, type);
        Assert.True(answer.Status == 200, answer.ToString());
        return answer;
    }

    private static Task<Answer> Send(Browser browser, byte[] bytes, string type)
    {
        var content = new ByteArrayContent(bytes);
        content.Headers.ContentType = new MediaTypeHeaderValue(type);
        return browser.Send(HttpMethod.Put, Path, content);
    }

    private static async Task<byte[]> Bytes(SmallHost host, string address) => await (await host.Browser().Get(address)).Response.Content.ReadAsByteArrayAsync();

    /// <summary>A stream that does not know how long it is.</summary>
    private sealed class Unsized(Stream inner) : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count) => inner.Read(buffer, offset, count);

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}

namespace LiveHeat.Rehearsal.Phones;

/// <summary>The server refused (RFC 9457): a stable code and a sentence for a person.</summary>
public sealed class SiteRefusedException(int status, string code, string detail, TimeSpan? retryAfter = null) : Exception($"{code}: {detail}")
{
    public int Status { get; } = status;

    public string Code { get; } = code;

    public string Detail { get; } = detail;

    /// <summary>How long the server asks to wait; null when it does not say.</summary>
    public TimeSpan? RetryAfter { get; } = retryAfter;

    /// <summary>The server's own trouble: the same may work later.</summary>
    public bool MayPass => Status >= 500 || Status is 408 or 429;
}

/// <summary>No answer came. Whether the request arrived is unknown: send it again under the same id.</summary>
public sealed class SiteSilentException(Exception inner) : Exception($"No answer from the server: {inner.Message}", inner);

namespace LiveHeat.Rehearsal.Phones;

/// <summary>A phone's WiFi: there, or not. While it is not, nothing leaves and nothing arrives, and open connections are dead.</summary>
public sealed class PhoneNetwork
{
    private readonly Lock turn = new();
    private TaskCompletionSource gone = New();
    private bool loseNextAnswer;

    /// <summary>Whether anything gets through.</summary>
    public bool Up { get; private set; } = true;

    /// <summary>Completes when the network goes; a new one each time it comes back.</summary>
    public Task Gone
    {
        get
        {
            lock (turn)
            {
                return gone.Task;
            }
        }
    }

    /// <summary>The network goes now. Answers on their way are lost.</summary>
    public void Lose()
    {
        lock (turn)
        {
            Up = false;
            loseNextAnswer = false;
            gone.TrySetResult();
        }
    }

    /// <summary>The network goes in the middle of the next write: the server has it, the phone never learns.</summary>
    public void LoseAfterNextWrite()
    {
        lock (turn)
        {
            loseNextAnswer = true;
        }
    }

    /// <summary>The network is back.</summary>
    public void Restore()
    {
        lock (turn)
        {
            loseNextAnswer = false;
            if (!Up)
            {
                Up = true;
                gone = New();
            }
        }
    }

    /// <summary>For the HTTP client: throws while the network is away.</summary>
    internal void Pass(bool written)
    {
        lock (turn)
        {
            if (written && loseNextAnswer)
            {
                loseNextAnswer = false;
                Up = false;
                gone.TrySetResult();
            }

            if (!Up)
            {
                throw new HttpRequestException("This phone has no network.");
            }
        }
    }

    private static TaskCompletionSource New() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
